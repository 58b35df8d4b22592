import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodCode, judgeAbove, judgeTurning, kinds } from '../../../shared/safety/index.ts';

const rawRibs = { kind: 'intact', raw: true } as const;
const rawChicken = { kind: 'chicken', raw: true } as const;

describe('racks that turn', () => {
  it('take no raw poultry in a mixed load, since each is above each at some time', () => {
    expect(judgeTurning(foodCode, [rawRibs, rawChicken])).toMatchObject({
      ok: false,
      row: { id: 'raw-poultry-above' },
    });
  });

  it('take raw poultry alone, and raw ribs beside raw shoulders', () => {
    expect(judgeTurning(foodCode, [rawChicken, rawChicken]).ok).toBe(true);
    expect(judgeTurning(foodCode, [rawRibs, { kind: 'injected', raw: true }]).ok).toBe(true);
  });

  it('refuse exactly the loads of which some pair may not lie above one another', () => {
    const lying = fc.record({ kind: fc.constantFrom(...kinds), raw: fc.boolean() });
    fc.assert(
      fc.property(fc.array(lying, { maxLength: 5 }), (load) => {
        const pairs = load.flatMap((upper) =>
          load.map((lower) => judgeAbove(foodCode, upper, lower)),
        );
        expect(judgeTurning(foodCode, load).ok).toBe(pairs.every(({ ok }) => ok));
      }),
    );
  });
});
