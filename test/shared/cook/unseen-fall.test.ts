import { describe, expect, it } from 'vitest';
import { airOfSmoker } from '../../../shared/cook/fire.ts';
import { forecast, type Smoker, seenIn, unseenFalls } from '../../../shared/cook/index.ts';
import { celsius, minutes, must } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

const air = (...points: readonly (readonly [min: number, tempC: number])[]) =>
  points.map(([min, tempC]) => ({ atS: minutes(min), tempC }));

/** Read at noon, and not again before it stood 25 K lower, and stayed there. */
const unread = air([0, 110], [15, 110], [75, 85], [90, 85], [105, 85], [120, 85]);
const fire = (log: Smoker['log']): Smoker => ({ ...smoker, setC: celsius(110), log });

describe('air that fell while nobody read it', () => {
  it('is known before and after, and in between it is said that nothing is', () => {
    expect(unseenFalls(unread)).toEqual([
      { before: { atS: minutes(15), tempC: 110 }, after: { atS: minutes(75), tempC: 85 } },
    ]);
    expect(seenIn(unread)).toEqual({ steady: unread, openings: [] });
  });

  it('may have fallen at any time: it is now as it was before, now as it was after', () => {
    const curves = [0.1, 0.5, 0.9].map((share) => airOfSmoker(fire(unread), share));
    const at45 = curves.map((curve) => curve.at(minutes(45)));
    expect(at45).toEqual([85, 97.5, 110]);
    for (const curve of curves) {
      expect(curve.at(minutes(15))).toBe(110);
      expect(curve.at(minutes(75))).toBe(85);
    }
  });

  // By hand: of 25 K lost at a time that is as likely as another the mean loss over the hour is a
  // half of it, as on a straight line; only how sure anybody is differs.
  it('is on the mean over all such times as cold as on a straight line', () => {
    const shares = Array.from({ length: 100 }, (_, i) => (i + 0.5) / 100);
    const lost = shares.map((share) => {
      const curve = airOfSmoker(fire(unread), share);
      const steps = Array.from({ length: 60 }, (_, i) => 110 - curve.at(minutes(15.5 + i)));
      return steps.reduce((sum, k) => sum + k, 0) / 60;
    });
    const mean = lost.reduce((sum, k) => sum + k, 0) / lost.length;
    expect(Math.abs(mean - 12.5)).toBeLessThan(0.5);
    expect(Math.max(...lost) - Math.min(...lost)).toBeGreaterThan(20);
  });

  it('is no fall of which nothing is known where the readings lie near each other', () => {
    const read = air([0, 110], [15, 110], [30, 95], [45, 94], [60, 94]);
    expect(unseenFalls(read)).toEqual([]);
    expect(unseenFalls(air([0, 110], [60, 104], [120, 97]))).toEqual([]);
  });

  it('was a door where it is up again within twenty minutes, and none while nobody knows', () => {
    const upAgain = air([0, 110], [45, 80], [50, 100], [55, 108]);
    expect(unseenFalls(upAgain)).toEqual([]);
    expect(seenIn(upAgain).openings).toHaveLength(1);
    const last = air([0, 110], [45, 80]);
    expect(seenIn(last).openings).toEqual([]);
    expect(unseenFalls(last)).toHaveLength(1);
    const muchLater = air([0, 110], [60, 80], [120, 110]);
    expect(seenIn(muchLater).openings).toEqual([]);
    expect(unseenFalls(muchLater)).toHaveLength(1);
  });
});

describe('a forecast through such a gap', () => {
  const readings = hourly(20, 45, 57);
  const range = (log: Smoker['log']) => {
    const found = forecast(shoulder, fire(log), readings, at(4));
    if (!found.ok) throw new Error(JSON.stringify(found.faults));
    const { p10S, p90S } = must(found.forecast.targets[0], 'a target');
    return must(p90S, 'p90') - must(p10S, 'p10');
  };

  it('is less sure than where the fall was read every quarter of an hour', () => {
    const after = [200, 215, 230].map((min) => [min, 85] as const);
    const seen = air(
      ...Array.from({ length: 5 }, (_, i) => [i * 15, 110] as const),
      ...Array.from({ length: 9 }, (_, i) => [75 + i * 15, 110 - (25 / 9) * (i + 1)] as const),
      ...after,
    );
    const gap = air(...Array.from({ length: 5 }, (_, i) => [i * 15, 110] as const), ...after);
    expect(range(gap)).toBeGreaterThan(range(seen));
  });
});
