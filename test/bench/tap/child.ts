import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';

export type Child = {
  /** The first capture of the first line of its output that fits. */
  readonly said: string;
  stop(): Promise<void>;
};

/** Runs a program of ours and waits for the line that says where it can be found. */
export async function startChild(file: string, args: string[], line: RegExp): Promise<Child> {
  const child = spawn(process.execPath, ['--import', 'tsx', file, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return { said: await firstLine(child, line), stop: () => stop(child) };
}

function firstLine(child: ChildProcess, line: RegExp): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('exit', (code) => reject(new Error(`it ended with ${code} before it was ready`)));
    if (child.stdout === null) throw new Error('no output');
    createInterface(child.stdout).on('line', (text) => {
      const found = line.exec(text)?.[1];
      if (found !== undefined) resolve(found);
    });
  });
}

async function stop(child: ChildProcess) {
  child.removeAllListeners('exit');
  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await ended;
}
