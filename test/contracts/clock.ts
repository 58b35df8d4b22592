import { describe, expect, it } from 'vitest';
import type { Clock } from '../../server/clock.ts';

/** What every clock promises. `pass` lets so much of its own time go by. */
export function clockContract(
  name: string,
  setUp: () => { clock: Clock; pass: (ms: number) => Promise<void> },
) {
  describe(`the clock that is ${name}`, () => {
    it('shows whole milliseconds, later and later', async () => {
      const { clock, pass } = setUp();
      const before = clock.now();
      await pass(40);
      expect(clock.now()).toBeGreaterThanOrEqual(before + 40);
      expect(Number.isInteger(clock.now())).toBe(true);
    });

    it('runs what was put off once, and in order of time', async () => {
      const { clock, pass } = setUp();
      const ran: string[] = [];
      clock.after(60, () => ran.push('later'));
      clock.after(20, () => ran.push('sooner'));
      clock.after(0, () => ran.push('at once'));
      expect(ran).toEqual([]);
      await pass(400);
      expect(ran).toEqual(['at once', 'sooner', 'later']);
    });

    it('runs again and again what is to be, until it is stopped', async () => {
      const { clock, pass } = setUp();
      let runs = 0;
      const stop = clock.every(100, () => {
        runs += 1;
      });
      while (runs < 2) await pass(100);
      stop();
      const after = runs;
      await pass(500);
      expect(runs).toBe(after);
    });

    it('does not run what was called off', async () => {
      const { clock, pass } = setUp();
      let runs = 0;
      for (const delayMs of [0, 20]) {
        clock.after(delayMs, () => {
          runs += 1;
        })();
      }
      await pass(100);
      expect(runs).toBe(0);
    });
  });
}
