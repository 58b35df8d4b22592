import { describe, expect, it } from 'vitest';
import { cutPriors, forecast, smokerPriors, withWetBulb } from '../../../shared/cook/index.ts';
import { wholeOf } from '../../../shared/cook/meat.ts';
import { meaningOf } from '../../../shared/cook/prior.ts';
import { celsius } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

const rows = [
  ...Object.entries(cutPriors).map(([name, { unknowns }]) => ({ name, unknowns })),
  ...Object.entries(smokerPriors).map(([name, { unknowns }]) => ({ name, unknowns })),
];

describe('a prior', () => {
  it('means its median in the middle, and a spread up and down of it', () => {
    const ratio = { scale: 'ratio', median: 9, spread: 1.3 } as const;
    const shift = { scale: 'shift', median: 0, spread: 2 } as const;
    const between = { scale: 'between', low: 0.4, high: 0.8 } as const;
    const rest = { sureness: 'judged', source: 'made up' } as const;
    const of = (z: number) =>
      [ratio, shift, between].map((prior) => meaningOf({ ...prior, ...rest }, z));
    expect(of(0)).toEqual([9, 0, expect.closeTo(0.6, 12)]);
    expect(of(1).slice(0, 2)).toEqual([expect.closeTo(11.7, 12), 2]);
    // A normal z makes any value between the bounds about as likely as another.
    expect(of(0.6745)[2]).toBeCloseTo(0.7, 2);
    expect(of(-9)[2]).toBeCloseTo(0.4, 4);
  });

  it.each(rows)('of $name says for each number where it comes from and how sure it is', (row) => {
    for (const { source, sureness } of Object.values(row.unknowns)) {
      expect(source).not.toBe('');
      expect(['textbook', 'measured', 'judged']).toContain(sureness);
    }
  });

  it.each(Object.entries(cutPriors))('of %s is of meat that sums to one', (_, { composition }) => {
    expect(wholeOf(composition)).toBeCloseTo(1, 2);
  });
});

describe("a smoker's humidity, read with a wet sock", () => {
  const read = withWetBulb(smokerPriors.draught, celsius(110), celsius(40.44));

  it('is what the two thermometers say, and surer than a guess', () => {
    const { humidity } = read?.unknowns ?? {};
    if (humidity?.scale !== 'ratio') throw new Error('a ratio');
    expect(humidity.median).toBeCloseTo(0.02, 4);
    expect(humidity.spread).toBeLessThan(smokerPriors.draught.unknowns.humidity.spread);
  });

  it('is none where the wet one is the warmer, or the air would be drier than dry', () => {
    expect(withWetBulb(smokerPriors.draught, celsius(60), celsius(70))).toBeUndefined();
    expect(withWetBulb(smokerPriors.draught, celsius(110), celsius(20))).toBeUndefined();
  });

  it('makes the forecast another', () => {
    if (read === undefined) throw new Error('a prior');
    const readings = hourly(27, 50, 60);
    const guessed = forecast(shoulder, smoker, readings, at(3));
    expect(forecast(shoulder, { ...smoker, prior: read }, readings, at(3))).not.toEqual(guessed);
  });
});

describe("a kitchen's own paper", () => {
  it('takes the place of the usual one', () => {
    const papered = {
      ...shoulder,
      stays: [
        ...shoulder.stays,
        { from: { by: 'core', tempC: celsius(66) }, place: { kind: 'home' }, wrap: 'paper' },
      ],
    } as const;
    const p50H = (passes: number) => {
      const paper = { contactWPerM2K: 120, passes, sureness: 'measured' } as const;
      const found = forecast(papered, smoker, [], { ...at(0), wraps: { paper } });
      return found.ok ? (found.forecast.targets[1]?.p50S ?? Number.NaN) / 3600 : Number.NaN;
    };
    // Nearly tight, and so open that it hardly dries at all.
    expect(p50H(0.01)).toBeLessThan(p50H(0.2) - 1);
  });
});
