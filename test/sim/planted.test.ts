import { describe, expect, it } from 'vitest';
import { smallDay } from './adopted.ts';
import { plantedFaults } from './planted.ts';
import { run } from './run.ts';
import { PROMISES, type PromiseName } from './verdict.ts';

const day = smallDay();
/** Days that a planted fault is given to show itself. */
const SEEDS = Array.from({ length: 40 }, (_, index) => index + 1);

describe('the simulator', () => {
  for (const { name, planted, breaks } of plantedFaults) {
    it(`finds ${name}`, async () => {
      for (const seed of SEEDS) {
        const { broken } = await run({ seed, day, planted });
        if (!broken) continue;
        expect(breaks, broken.found).toContain(broken.promise);
        return;
      }
      expect.fail(`not found in ${SEEDS.length} days`);
    }, 120_000);
  }

  it('has a planted fault for every promise that it watches', () => {
    const broken = new Set(plantedFaults.flatMap(({ breaks }) => breaks));
    const never = (Object.keys(PROMISES) as PromiseName[]).filter((name) => !broken.has(name));
    expect(never).toEqual([]);
  });
});
