import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { builtHub } from '../../server/built.mjs';
import { demoFiles } from '../../server/demo/index.ts';
import { root } from '../../server/fingerprint.mjs';
import { furnish } from '../../server/folder/furnish.ts';
import { setKeptClock } from '../../server/kept-clock.ts';
import { resolveLocal, type WallTime } from '../../shared/kernel/index.ts';

/** A hub as a process of its own, so that it can be killed as a power cut would. */
export type HubProcess = {
  readonly address: string;
  readonly port: number;
  /** Without a word: what was not durable is gone. */
  kill(): Promise<void>;
  /** As Ctrl-C. */
  stop(): Promise<void>;
};

/** Starts the demo kept in `folder`, and waits until it says that it is ready. */
export async function startHub(options: {
  readonly folder: string;
  readonly port?: number;
  readonly speed?: number;
  /** Said after all others on its command line. */
  readonly also?: readonly string[];
}): Promise<HubProcess> {
  const { folder, port = 0, speed = 1, also = [] } = options;
  const args = ['--demo', folder, '--port', `${port}`, '--demo-speed', `${speed}`, ...also];
  const child = spawn(process.execPath, [builtHub('main'), ...args], { cwd: root });
  child.stderr?.pipe(process.stderr);
  const address = await readyAddress(child);
  const end = async (signal: NodeJS.Signals) => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const gone = once(child, 'exit');
    child.kill(signal);
    await gone;
  };
  return {
    address,
    port: Number(new URL(address).port),
    kill: () => end('SIGKILL'),
    stop: () => end('SIGINT'),
  };
}

async function readyAddress(child: ChildProcess): Promise<string> {
  if (!child.stdout) throw new Error('a hub has words to say');
  let address: string | undefined;
  for await (const line of createInterface({ input: child.stdout })) {
    address ??= /https?:\/\/[^/\s]+/.exec(line)?.[0];
    if (line.startsWith('Ready') && address) return address;
  }
  throw new Error('the hub ended before it was ready');
}

/**
 * While no hub runs, that many minutes pass on the clock of a folder that once ran fast: it goes on
 * then, too, so it is enough that the world's time at which it was set lies further back.
 */
export function letTimePass(folder: string, minutes: number): void {
  const file = join(folder, 'clock.json');
  const anchor = JSON.parse(readFileSync(file, 'utf8')) as { realMs: number; speed: number };
  const realMs = Math.round(anchor.realMs - (minutes * 60_000) / anchor.speed);
  writeFileSync(file, JSON.stringify({ ...anchor, realMs }));
}

/** Where the demo's kitchen stands, and a day on which no clock there is changed. */
const ZONE = 'America/Chicago';
const DAY = '2026-11-28';

/**
 * Has the demo of an empty folder, whose noon is the moment at which it is first started, show this
 * time on its kitchen's wall then, whatever hour it is where the test runs.
 */
export function letDemoBegin(folder: string, time: WallTime): void {
  const { at } = resolveLocal(DAY, time, ZONE);
  furnish(folder, () => demoFiles(at, ZONE));
  setKeptClock(folder, at);
}
