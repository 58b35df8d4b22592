import { describe, expect, it } from 'vitest';
import { cutPriors, forecast, smokerPriors } from '../../shared/cook/index.ts';
import {
  celsius,
  fahrenheit,
  fromPounds,
  metres,
  minutes,
  seconds,
  toCelsius,
} from '../../shared/kernel/index.ts';

/**
 * National Live Stock and Meat Board, roasting timetable for beef: minutes a pound at 325 °F,
 * from the refrigerator into a cold oven (as certifiedangusbeef.com/kitchen/timetables prints
 * it). It says nothing of shapes: those are ours, thickness to width to length as such roasts are
 * cut, and the share of that brick which a roast with round edges fills.
 */
const shapes = {
  'round tip': { width: 1.2, length: 1.5, fills: 0.7 },
  'top loin, 4 to 6 lb': { width: 1.7, length: 3, fills: 0.85 },
  'top loin, 6 to 8 lb': { width: 1.7, length: 4.2, fills: 0.85 },
  'rib, small end': { width: 1.3, length: 1.4, fills: 0.8 },
  'eye of round': { width: 1, length: 2.5, fills: Math.PI / 4 },
} as const;

const table = [
  ['round tip', 3.25, 135, 30, 35],
  ['round tip', 3.25, 155, 35, 40],
  ['round tip', 5, 135, 25, 30],
  ['round tip', 5, 155, 30, 35],
  ['round tip', 9, 135, 18, 22],
  ['round tip', 9, 155, 23, 25],
  ['top loin, 4 to 6 lb', 5, 135, 17, 21],
  ['top loin, 4 to 6 lb', 5, 155, 21, 25],
  ['top loin, 6 to 8 lb', 7, 135, 14, 17],
  ['top loin, 6 to 8 lb', 7, 155, 17, 21],
  ['rib, small end', 5, 135, 25, 30],
  ['rib, small end', 7, 135, 23, 26],
  ['eye of round', 2.5, 135, 20, 22],
] as const;

/** Nobody has fitted the priors to any of this. */
function roasted([name, pounds, targetF]: (typeof table)[number]) {
  const { width, length, fills } = shapes[name];
  const thicknessM = metres((fromPounds(pounds) / (1050 * fills * width * length)) ** (1 / 3));
  const found = forecast(
    {
      cut: cutPriors.flat,
      sides: {
        thicknessM,
        widthM: metres(width * thicknessM),
        lengthM: metres(length * thicknessM),
      },
      startC: celsius(4),
      stays: [{ from: { by: 'time', atS: seconds(0) }, place: { kind: 'home' }, wrap: 'none' }],
      targets: [{ id: 'done', tempC: toCelsius(fahrenheit(targetF)), way: 'rising' }],
    },
    {
      id: 'oven',
      prior: smokerPriors.draught,
      setC: toCelsius(fahrenheit(325)),
      log: [
        { atS: 0, tempC: 20 },
        { atS: minutes(15), tempC: toCelsius(fahrenheit(325)) },
      ],
      doors: [],
    },
    [],
    { seed: 1, nowS: seconds(0), members: 200 },
  );
  const done = found.ok ? found.forecast.targets[0] : undefined;
  const perPound = (timeS: number | undefined) => (timeS ?? Number.NaN) / 60 / pounds;
  return {
    p10: perPound(done?.p10S),
    p50: perPound(done?.raw?.p50S),
    p90: perPound(done?.p90S),
  };
}

describe('beef roasts of a timetable, minutes a pound', () => {
  const rows = table.map((row) => ({ row, found: roasted(row) }));

  it.each(rows)('$row lie in the range of the forecast', ({ row, found }) => {
    const [, , , from, to] = row;
    expect(to).toBeGreaterThan(found.p10);
    expect(from).toBeLessThan(found.p90);
  });

  it('are met by the median within a fifth, all but the eye of round', () => {
    // The muscle is slimmer than the cylinder that stands for it here.
    for (const { row, found } of rows) {
      const [name, , , from, to] = row;
      if (name === 'eye of round') continue;
      expect(found.p50).toBeGreaterThan(0.8 * from);
      expect(found.p50).toBeLessThan(1.2 * to);
    }
  });

  it('are met on the whole within a twelfth', () => {
    const misses = rows.map(({ row, found }) => Math.log((2 * found.p50) / (row[3] + row[4])));
    const mean = misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
    expect(Math.abs(mean)).toBeLessThan(Math.log(13 / 12));
  });

  it('take less of a pound the heavier they are, as the table has it', () => {
    const tips = rows.filter(({ row }) => row[0] === 'round tip' && row[2] === 135);
    const [light = 0, , heavy = 0] = tips.map(({ row, found }) => found.p50 * row[1]);
    // From 3.25 to 9 lb the table's hours grow by a power of 0.53 of the weight.
    const power = Math.log(heavy / light) / Math.log(9 / 3.25);
    expect(Math.abs(power - 0.53)).toBeLessThan(0.08);
  });
});
