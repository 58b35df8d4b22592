import { describe, expect, it } from 'vitest';
import { airOfSmoker } from '../../../shared/cook/fire.ts';
import { openingsOf, type Smoker, seenIn } from '../../../shared/cook/index.ts';
import { celsius, hours, minutes } from '../../../shared/kernel/index.ts';
import { smoker } from './shoulder.ts';

const quarters = (...temps: readonly number[]) =>
  temps.map((tempC, index) => ({ atS: 900 * (index + 1), tempC }));

const air = (change: Partial<Smoker>) => airOfSmoker({ ...smoker, setC: celsius(110), ...change });

/** Kelvin times seconds that the air has lost of a steady 110 °C. */
function lostKS(change: Partial<Smoker>, toS: number): number {
  const curve = air(change);
  let lost = 0;
  for (let timeS = 0; timeS < toS; timeS += 10) lost += 10 * (110 - curve.at(timeS));
  return lost;
}

describe('the air of a smoker', () => {
  it('is as set where nothing was logged', () => {
    const curve = air({});
    expect([0, hours(1), hours(9)].map((timeS) => curve.at(timeS))).toEqual([110, 110, 110]);
  });

  it('runs straight from entry to entry, and from the last one to the set temperature', () => {
    const curve = air({ log: quarters(100, 104, 96) });
    expect(curve.at(0)).toBe(100);
    expect(curve.at(900 + 450)).toBe(102);
    expect(curve.at(2700)).toBe(96);
    expect(curve.at(2700 + minutes(15))).toBeCloseTo(103, 9);
    expect(curve.at(2700 + minutes(30))).toBe(110);
    expect(curve.at(hours(9))).toBe(110);
  });

  it('may be read again from an earlier time', () => {
    const curve = air({ log: quarters(100, 104, 96) });
    expect(curve.at(2700)).toBe(96);
    expect(curve.at(900)).toBe(100);
  });

  it('falls about an opened door, the more the longer it was open, and comes back', () => {
    const opened = (openS: number) => ({ doors: [{ atS: hours(2), openS: minutes(openS) }] });
    expect(air(opened(2)).at(hours(2))).toBeLessThan(105);
    expect(air(opened(2)).at(hours(3))).toBe(110);
    expect(lostKS(opened(1), hours(4))).toBeLessThan(lostKS(opened(3), hours(4)));
    // Three fifths of 85 K at most, for the time open and the five minutes that it takes to
    // regain them.
    expect(lostKS(opened(2), hours(4))).toBeLessThan(0.6 * 85 * (120 + 300));
    expect(lostKS(opened(2), hours(4))).toBeGreaterThan(0.3 * 85 * (120 + 300));
  });

  it('takes an entry far below its neighbours for a door, not for half an hour of cold', () => {
    const steady = quarters(110, 110, 110, 110, 110, 110);
    const dipped = quarters(110, 110, 110, 72, 110, 110);
    expect(lostKS({ log: steady }, hours(2))).toBe(0);
    const lost = lostKS({ log: dipped }, hours(2));
    expect(lost).toBeGreaterThan(0);
    expect(lost).toBeLessThan(0.6 * (110 - 72) * 900);
  });

  it('does not take a fire that goes down for a door', () => {
    const curve = air({ log: quarters(110, 110, 95, 94) });
    expect(curve.at(2700)).toBe(95);
  });

  it('counts a door once that both was noted and shows in the log', () => {
    const log = quarters(110, 110, 110, 72, 110, 110);
    const doors = [{ atS: minutes(58), openS: minutes(2) }];
    const once = lostKS({ log: quarters(110, 110, 110, 110, 110, 110), doors }, hours(2));
    expect(lostKS({ log, doors }, hours(2))).toBeCloseTo(once, 6);
  });
});

describe('openings that are read off the air', () => {
  const minutely = (temps: readonly number[]) =>
    temps.map((tempC, index) => ({ atS: 60 * index, tempC }));
  const falling = [110, 110, 84, 78, 82, 88, 93, 97, 100, 103, 105, 107, 109, 110];

  it('begin where it falls suddenly, and last until it is coldest', () => {
    const { openings, steady } = seenIn(minutely(falling));
    expect(openings).toEqual([{ atS: 60, openS: 120 }]);
    expect(steady.every(({ tempC }) => tempC >= 102)).toBe(true);
  });

  it('are none where a fire fades slowly, however far', () => {
    const fading = minutely(Array.from({ length: 60 }, (_, i) => 110 - i / 2));
    expect(seenIn(fading)).toEqual({ steady: fading, openings: [] });
  });

  it('are none where it falls suddenly and stays down', () => {
    const down = minutely([110, 110, ...Array.from({ length: 40 }, () => 90)]);
    expect(seenIn(down)).toEqual({ steady: down, openings: [] });
  });

  it('of which somebody told are not counted twice', () => {
    const told = [{ atS: 90, openS: 60 }];
    const { openings } = seenIn(minutely(falling));
    expect(openingsOf(told, openings)).toEqual(told);
    expect(openingsOf([{ atS: 7200, openS: 60 }], openings)).toHaveLength(2);
  });
});
