import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantiles } from '../../../shared/cook/index.ts';
import { type Chance, chancesOf, valueAt } from '../../../shared/day/chances.ts';
import { must } from '../../../shared/kernel/index.ts';

const CASES = 2000;
const doubt = { low: 100, middle: 120, high: 160, never: 0 };
const loads = (count: number, ofSmoker: number): Chance[] =>
  Array.from({ length: count }, (_, i) => ({ name: `load ${i}`, smoker: 'a', ofSmoker }));

/** The last of some loads to be there, in each case. */
function lastOf(things: readonly Chance[]): number[] {
  const chances = chancesOf(things, CASES);
  return Array.from({ length: CASES }, (_, place) =>
    Math.max(
      ...things.map(({ name }) => valueAt(doubt, must(chances.get(name)?.[place], 'a score'))),
    ),
  );
}

/** In how many of all cases something is there by a time. */
const shareBy = (values: readonly number[], by: number) =>
  values.filter((value) => value <= by).length / values.length;

describe('the last of several loads', () => {
  // Order statistics: the greatest of n independent values is below x with the n-th power of the
  // chance that one is (David and Nagaraja, "Order Statistics", 2.1).
  it.each([1, 2, 4, 8])('of %d that have nothing in common is there as powers say', (count) => {
    const last = lastOf(loads(count, 0));
    for (const [by, one] of [
      [doubt.low, 0.1],
      [doubt.middle, 0.5],
      [doubt.high, 0.9],
    ] as const) {
      expect(Math.abs(shareBy(last, by) - one ** count)).toBeLessThan(0.035);
    }
  });

  it('is there with the others where all of it is their smoker’s doing', () => {
    expect(quantiles(lastOf(loads(6, 1)), [0.1, 0.5, 0.9]).map(Math.round)).toEqual([
      100, 120, 160,
    ]);
  });

  // Two normal values with correlation r are both below their middles in 1/4 + arcsin(r)/2π of all
  // cases (Sheppard 1899, by hand): 1/3 for a half.
  it('lies between, where half of the doubt is common', () => {
    expect(Math.abs(shareBy(lastOf(loads(2, 0.5)), doubt.middle) - 1 / 3)).toBeLessThan(0.03);
  });

  it('has nothing in common with what is in another smoker', () => {
    const [one, other] = loads(2, 1);
    const apart = [must(one, 'a load'), { ...must(other, 'a load'), smoker: 'b' }];
    expect(Math.abs(shareBy(lastOf(apart), doubt.middle) - 0.25)).toBeLessThan(0.03);
  });
});

describe('the chances of one load', () => {
  const anyChance = fc.record({
    name: fc.string({ minLength: 1, maxLength: 8 }),
    smoker: fc.constantFrom('a', 'b', null),
    ofSmoker: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  it('are in a tenth, a half and nine tenths of few cases what its forecast says', () => {
    fc.assert(
      fc.property(anyChance, (thing) => {
        const scores = must(chancesOf([thing], 40).get(thing.name), 'chances');
        const found = quantiles(
          scores.map((score) => valueAt(doubt, score)),
          [0.1, 0.5, 0.9],
        );
        const wanted = [doubt.low, doubt.middle, doubt.high];
        found.forEach((value, i) => {
          expect(Math.abs(value - must(wanted[i], 'one'))).toBeLessThan(0.5);
        });
      }),
    );
  });

  it('are the same whatever else is asked about', () => {
    fc.assert(
      fc.property(anyChance, fc.array(anyChance, { maxLength: 4 }), (thing, others) => {
        const with_ = [...others.filter(({ name }) => name !== thing.name), thing];
        expect(chancesOf(with_, 20).get(thing.name)).toEqual(
          chancesOf([thing], 20).get(thing.name),
        );
      }),
    );
  });

  it('never come in as many cases as the forecast says', () => {
    const scores = must(chancesOf(loads(1, 0), 100).get('load 0'), 'chances');
    const values = scores.map((score) => valueAt({ ...doubt, never: 0.15 }, score));
    expect(values.filter((value) => value === Number.POSITIVE_INFINITY)).toHaveLength(15);
  });
});
