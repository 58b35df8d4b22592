import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { manualClock, systemClock } from '../../server/clock.ts';
import { keptClock } from '../../server/kept-clock.ts';
import { instant } from '../../shared/kernel/index.ts';
import { clockContract } from '../contracts/clock.ts';

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

clockContract('the machine’s', () => ({ clock: systemClock(), pass: (ms) => sleep(ms + 5) }));
clockContract('ten times as fast', () => ({
  clock: systemClock(10),
  pass: (ms) => sleep(ms / 10 + 5),
}));
clockContract('moved by hand', () => {
  const clock = manualClock(instant(1_000));
  return { clock, pass: async (ms) => clock.advance(ms) };
});

it('keeps its timers when somebody sets the time', () => {
  const clock = manualClock(instant(10_000));
  let ran = false;
  clock.after(1_000, () => {
    ran = true;
  });
  clock.jump(instant(0));
  clock.advance(999);
  expect(ran).toBe(false);
  clock.advance(1);
  expect(ran).toBe(true);
  expect(clock.now()).toBe(1_000);
});

it('goes on from where a fast clock would be by now, also while no hub was running', () => {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-clock-'));
  let realMs = 1_000_000;
  const open = (speed: number) => keptClock(folder, speed, () => realMs);
  const first = open(60);
  realMs += 1_000;
  expect(first.now()).toBe(1_060_000);
  realMs += 2_000;
  const again = open(60);
  expect(again.now()).toBe(1_180_000);
  const slower = open(1);
  realMs += 1_000;
  expect(slower.now()).toBe(1_181_000);
  rmSync(folder, { recursive: true });
});
