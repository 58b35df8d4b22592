import { describe, expect, it } from 'vitest';
import { smallDay } from './adopted.ts';
import { HAPPENINGS, type Happening } from './journal.ts';
import { reportOf } from './report.ts';
import { run } from './run.ts';

/** `SIM_SEED=17` lives that day alone; `SIM_SEEDS=10000` lives so many. */
const alone = process.env['SIM_SEED'];
const count = Number(process.env['SIM_SEEDS'] ?? 200);
const seeds = alone ? [Number(alone)] : Array.from({ length: count }, (_, index) => index + 1);
const day = smallDay();

describe('a day of trouble', () => {
  const happened = new Map<Happening, number>();

  it(`keeps every promise, on ${alone ? `seed ${alone}` : `${count} seeds`}`, async () => {
    for (const seed of seeds) {
      const result = await run({ seed, day });
      expect(result.broken, reportOf(seed, result)).toBeNull();
      for (const happening of HAPPENINGS) {
        const times = result.journal.countOf(happening);
        happened.set(happening, (happened.get(happening) ?? 0) + times);
      }
    }
  }, 600_000);

  if (!alone) {
    it('brings about everything that it is meant to bring about', () => {
      const never = HAPPENINGS.filter((happening) => !happened.get(happening));
      expect(never).toEqual([]);
    });
  }

  it('is the same day whenever it is lived with the same seed', async () => {
    const [seed = 1] = seeds;
    const [first, second] = [await run({ seed, day }), await run({ seed, day })];
    expect(second.journal.digest).toBe(first.journal.digest);
    expect(second.journal.lines).toEqual(first.journal.lines);
  });
});
