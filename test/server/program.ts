import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { builtHub } from '../../server/built.mjs';

const running = new Set<ChildProcess>();

/** The hub's program, run as a person runs it. */
export type Program = {
  /** All it wrote to stdout so far, by line. */
  readonly lines: readonly string[];
  readonly errors: () => string;
  /** Where its screens are, once it is ready. */
  address(): Promise<string>;
  /** Nobody reads any more what it says. */
  hangUp(): void;
  kill(signal: NodeJS.Signals): Promise<number | null>;
  /** Its exit code, when it ends by itself. */
  ended(): Promise<number | null>;
};

export function runProgram(...args: string[]): Program {
  const child = spawn(process.execPath, [builtHub('main'), ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running.add(child);
  let said = '';
  let errors = '';
  child.stdout.on('data', (bytes) => {
    said += bytes;
  });
  child.stderr.on('data', (bytes) => {
    errors += bytes;
  });
  const exit = once(child, 'close').then(([code]): number | null => {
    running.delete(child);
    return code;
  });
  const lines = () => said.split('\n').filter((line) => line !== '');
  return {
    get lines() {
      return lines();
    },
    errors: () => errors,
    async address() {
      while (lines().at(-1) !== 'Ready.') {
        const code = await Promise.race([once(child.stdout, 'data').then(() => null), exit]);
        if (code !== null) throw new Error(`it ended with ${code}: ${errors}`);
      }
      return /http:\S+(?=\/$)/m.exec(said)?.[0] ?? '';
    },
    hangUp() {
      for (const stream of [child.stdout, child.stderr]) stream.destroy();
    },
    kill(signal) {
      child.kill(signal);
      return exit;
    },
    ended: () => exit,
  };
}

/** Leaves nothing running behind a test that failed. */
export function endAllPrograms() {
  for (const child of running) child.kill('SIGKILL');
}
