import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitService } from '../../../shared/plan/split.ts';

const perPiece = (portions: number) => (count: number) => Math.ceil(count / portions);

describe('a service shared out among batches', () => {
  it('is one batch where one may stand long enough and is not too large', () => {
    const limits = { piecesFor: perPiece(2), mostPieces: 10, mostQuarters: () => 8 };
    expect(splitService([2, 3, 3, 2], limits)).toEqual([
      { fromQuarter: 0, toQuarter: 4, portions: 10, pieces: 5 },
    ]);
  });

  it('splits where the service outlasts the hold, into even batches', () => {
    const limits = { piecesFor: perPiece(2), mostPieces: 10, mostQuarters: () => 3 };
    expect(splitService([2, 2, 2, 2, 2, 2], limits).map(({ pieces }) => pieces)).toEqual([3, 3]);
  });

  it('brings several batches at once where a single quarter asks for more than one can be', () => {
    const limits = { piecesFor: perPiece(1), mostPieces: 4, mostQuarters: () => 4 };
    expect(splitService([10], limits).map(({ pieces }) => pieces)).toEqual([4, 3, 3]);
  });

  it('has its first batch ready when the doors open, also if nothing sells at once', () => {
    const limits = { piecesFor: perPiece(1), mostPieces: 4, mostQuarters: () => 4 };
    expect(splitService([0, 0, 3], limits)).toEqual([
      { fromQuarter: 0, toQuarter: 3, portions: 3, pieces: 3 },
    ]);
  });

  it('covers every portion within the limits, in no more batches than a greedy cook', () => {
    const demand = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 24 });
    const integer = (max: number) => fc.integer({ min: 1, max });
    fc.assert(
      fc.property(demand, integer(4), integer(12), integer(10), (portions, per, most, quarters) => {
        const piecesFor = perPiece(per);
        const limits = { piecesFor, mostPieces: most, mostQuarters: () => quarters };
        const stretches = splitService(portions, limits);
        const total = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
        expect(total(stretches.map((each) => each.portions))).toBe(total(portions));
        for (const { pieces, fromQuarter, toQuarter } of stretches) {
          expect(pieces).toBeLessThanOrEqual(most);
          expect(toQuarter - fromQuarter).toBeLessThanOrEqual(quarters);
        }
        expect(stretches.length).toBeLessThanOrEqual(greedy(portions, piecesFor, most, quarters));
      }),
    );
  });
});

/** Batches of a cook who lets each stretch run on as long as the limits allow. */
function greedy(
  demand: readonly number[],
  piecesFor: (portions: number) => number,
  most: number,
  quarters: number,
): number {
  let batches = 0;
  let at = 0;
  while (at < demand.length) {
    let portions = demand[at] ?? 0;
    let to = at + 1;
    while (to < demand.length && to - at < quarters) {
      const further = portions + (demand[to] ?? 0);
      if (piecesFor(further) > most) break;
      portions = further;
      to++;
    }
    batches += Math.ceil(piecesFor(portions) / most);
    at = to;
  }
  return batches;
}
