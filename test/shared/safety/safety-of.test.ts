import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius, hours, kilograms, minutes } from '../../../shared/kernel/index.ts';
import type { Oven, SafetyReport, Series } from '../../../shared/safety/index.ts';
import {
  celsiusCode,
  emptyCode,
  foodCode,
  kindNamed,
  lethalityOf,
  readLog,
  safetyOf,
  safetyOfProbes,
  tables,
} from '../../../shared/safety/index.ts';
import { curveF, degF, heldF, throughF, walk } from './series.ts';

const dryAndCool: Oven = { heat: 'still, dry', setC: degF(225), pieceKg: kilograms(6) };
const cabinet: Oven = { heat: 'humid', setC: degF(200), pieceKg: kilograms(3) };

const warned = ({ warnings }: SafetyReport) => warnings.map(({ warning }) => warning);
const refusing = ({ broken }: SafetyReport) => broken.map(({ row }) => row.id);

/** A shoulder from the cooler to 203 °F, and two pans of it chilled. */
const wholeDay = throughF(
  [
    [0, 38],
    [60, 50],
    [300, 130],
    [420, 160],
    [600, 165],
    [720, 203],
    [800, 135],
    [900, 70],
    [1080, 40],
  ],
  5,
);

describe('a whole cook and its cooling', () => {
  it('keeps every rule', () => {
    const report = safetyOf(wholeDay, 'injected', foodCode, { errorK: 0.5, oven: dryAndCool });
    expect(report).toMatchObject({
      profile: 'food-code',
      profile_version: 1,
      kind: 'injected',
      lethality_needed_log: 5,
      dwell_share: 1,
      dwell_met: true,
      end_met: true,
      cooling: { met: true, state: 'met' },
      broken: [],
      warnings: [],
      variances: [],
    });
    expect(report.come_up_h).toBeGreaterThan(4);
    expect(report.lethality_log).toBeGreaterThan(1000);
  });

  it('survives being written as JSON', () => {
    const report = safetyOf(wholeDay, 'roast', foodCode);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  });
});

describe('time at a temperature', () => {
  it('is not credited to a dry, cool smoker', () => {
    const report = safetyOf(heldF(140, 60), 'roast', foodCode, { oven: dryAndCool });
    expect(report).toMatchObject({ dwell_share: 1, dwell_met: false, dwell_credited: false });
    expect(refusing(report)).toEqual(['lethality-whole', 'end-roast']);
  });

  it('is not needed where the cook ends above 158 °F', () => {
    const report = safetyOf(heldF(160, 10), 'roast', foodCode, { oven: dryAndCool });
    expect(report).toMatchObject({ dwell_met: true, end_met: true, dwell_credited: false });
  });

  it('is credited to any oven if the profile says so', () => {
    const rows = foodCode.rows.map((row) =>
      row.rule === 'roast-oven' ? { ...row, limit: { anyOven: true as const } } : row,
    );
    const report = safetyOf(heldF(140, 12), 'roast', { ...foodCode, rows }, { oven: dryAndCool });
    expect(report).toMatchObject({ dwell_met: true, end_met: true, dwell_credited: true });
  });

  it('is counted, with a warning, where nobody named the oven', () => {
    const report = safetyOf(heldF(140, 12), 'roast', foodCode);
    expect(report).toMatchObject({ dwell_met: true, dwell_credited: null, end_met: false });
    expect(warned(report)).toContain('oven-unsaid');
    const named = safetyOf(heldF(140, 12), 'roast', foodCode, { oven: cabinet });
    expect(named).toMatchObject({ dwell_met: true, end_met: true });
  });

  it('must be unbroken by the table, though kill adds up', () => {
    const cook = throughF(
      [
        [0, 134],
        [30, 134],
        [40, 120],
        [50, 134],
        [80, 134],
      ],
      0.5,
    );
    const { logs, dwell, metAtS } = lethalityOf(cook, [tables['fsis-6.5-log']], {
      apartAtMostS: 600,
    });
    expect(logs).toBeGreaterThan(6.5);
    expect(dwell).toBeLessThan(0.8);
    expect(metAtS).toBeNull();
  });

  it('below 135 °F is allowed and warned of', () => {
    expect(warned(safetyOf(heldF(131, 89), 'roast', foodCode))).toContain('low-schedule');
    expect(warned(safetyOf(heldF(140, 12), 'roast', foodCode))).not.toContain('low-schedule');
  });
});

describe('the thermometer’s error', () => {
  it('counts against the limit', () => {
    const oneF = 1 / 1.8;
    expect(safetyOf(heldF(165, 10), 'chicken', foodCode, { errorK: oneF }).end_met).toBe(false);
    expect(safetyOf(heldF(166, 10), 'chicken', foodCode, { errorK: oneF }).end_met).toBe(true);
    expect(safetyOf(heldF(140, 12), 'roast', foodCode, { errorK: oneF }).dwell_met).toBe(false);
  });

  it('is asked for', () => {
    expect(warned(safetyOf(heldF(165, 10), 'chicken', foodCode))).toContain('error-unsaid');
    const said = safetyOf(heldF(165, 10), 'chicken', foodCode, { errorK: 0 });
    expect(warned(said)).not.toContain('error-unsaid');
  });
});

describe('what is not in the readings', () => {
  it('is not held against a log of the cooling alone', () => {
    const report = safetyOf(
      throughF([
        [0, 135],
        [100, 70],
        [300, 40],
      ]),
      'roast',
      foodCode,
    );
    expect(report).toMatchObject({ come_up_h: null, cooling: { met: true }, broken: [] });
  });

  it('is said of a cook that begins warm', () => {
    expect(
      warned(
        safetyOf(
          throughF([
            [0, 90],
            [300, 203],
          ]),
          'roast',
          foodCode,
        ),
      ),
    ).toContain('come-up-began-before');
  });

  it('is no cooling where nothing cooled', () => {
    expect(safetyOf(heldF(165, 10), 'chicken', foodCode).cooling).toEqual({
      stage1_h: null,
      total_h: null,
      met: null,
      state: 'none',
    });
  });

  it('lends no kill in a silence beyond ten minutes, at its lower end', () => {
    const silent: Series = [
      { atS: minutes(0), tempC: degF(140) },
      { atS: hours(2), tempC: degF(150) },
    ];
    const report = safetyOf(silent, 'roast', foodCode);
    expect(report.lethality_log).toBeCloseTo(
      safetyOf(heldF(140, 10), 'roast', foodCode).lethality_log ?? 0,
      9,
    );
    expect(report.dwell_met).toBe(false);
    expect(report.warnings).toContainEqual({ warning: 'silences', silences: 1, longest_s: 7200 });
    expect(warned(report)).toContain('few-readings');
  });
});

describe('a cook that is interrupted', () => {
  it('is told, and goes on counting its come-up', () => {
    const report = safetyOf(
      throughF([
        [0, 45],
        [60, 60],
        [120, 100],
        [180, 80],
        [300, 165],
      ]),
      'roast',
      foodCode,
    );
    expect(report.warnings).toContainEqual({
      warning: 'interrupted',
      interruptions: [
        {
          fromS: hours(2),
          heatedS: hours(2),
          toS: expect.any(Number),
          lowestC: expect.any(Number),
        },
      ],
    });
    expect(refusing(report)).toEqual([]);
  });

  it('and chilled is cooking in two goes, whose first heat is at most an hour', () => {
    const inTwo = (firstMin: number) =>
      throughF(
        [
          [0, 38],
          [firstMin, 120],
          [firstMin + 100, 40],
          [firstMin + 300, 170],
        ],
        5,
      );
    expect(refusing(safetyOf(inTwo(60), 'roast', foodCode))).toEqual([]);
    expect(refusing(safetyOf(inTwo(90), 'roast', foodCode))).toContain('first-heat');
  });

  it('is not seen in a stall that wavers', () => {
    const wavering = curveF((m) => 40 + m / 3 + 2 * Math.sin(m), { minutes: 360 });
    expect(warned(safetyOf(wavering, 'roast', foodCode))).not.toContain('interrupted');
  });
});

describe('several probes', () => {
  it('count at the coldest on the way up and at the warmest on the way down', () => {
    const tail = [
      [200, 135],
      [300, 70],
      [500, 40],
    ] as const;
    const cold = throughF([[0, 40], [150, 160], ...tail]);
    const warm = throughF([
      [0, 40],
      [150, 170],
      [200, 140],
      [330, 70],
      [500, 41],
    ]);
    const both = safetyOfProbes([warm, cold], 'chicken', foodCode);
    expect(both.end_met).toBe(false);
    expect(both.highest_c).toBeCloseTo(degF(160), 6);
    expect(both.cooling.stage1_h).toBeGreaterThan(
      safetyOf(cold, 'chicken', foodCode).cooling.stage1_h ?? 0,
    );
  });
});

describe('other profiles', () => {
  it('in °C has one table for every kind, and asks for no oven', () => {
    const held = heldF(158, 2);
    expect(safetyOf(held, 'chicken', celsiusCode)).toMatchObject({
      dwell_met: true,
      end_met: true,
      lethality_needed_log: 6,
    });
    expect(safetyOf(heldF(158, 1.9), 'roast', celsiusCode).dwell_met).toBe(false);
  });

  it('that is not filled in keeps nothing', () => {
    expect(safetyOf(wholeDay, 'roast', emptyCode)).toMatchObject({
      lethality_log: 0,
      dwell_met: false,
      end_met: false,
      cooling: { met: null },
    });
  });

  it('without a table for a kind lets its end temperature speak', () => {
    expect(safetyOf(heldF(135, 5), 'plant', foodCode)).toMatchObject({
      lethality_log: null,
      dwell_met: true,
      end_met: true,
    });
  });
});

describe('laws of the reckoning', () => {
  const cook = fc
    .array(fc.integer({ min: -40, max: 120 }), { minLength: 3, maxLength: 60 })
    .map((tenths) => walk(1300, tenths))
    .map((temps) => temps.map((temp, index) => ({ atS: minutes(index), tempC: degF(temp / 10) })));
  const kill = (readings: Series, errorK = 0) =>
    lethalityOf(readings, [tables['fsis-6.5-log']], { apartAtMostS: 600, errorK });

  it('more heat never kills less, and an error never helps', () => {
    fc.assert(
      fc.property(cook, fc.double({ min: 0.1, max: 3, noNaN: true }), (readings, byK) => {
        const hotter = readings.map(({ atS, tempC }) => ({ atS, tempC: celsius(tempC + byK) }));
        expect(kill(hotter).logs).toBeGreaterThanOrEqual(kill(readings).logs);
        expect(kill(hotter).dwell).toBeGreaterThanOrEqual(kill(readings).dwell);
        expect(kill(readings, byK).logs).toBeLessThanOrEqual(kill(readings).logs);
      }),
    );
  });

  it('a reading more on the straight line between two others changes no kill', () => {
    fc.assert(
      fc.property(cook, (readings) => {
        const denser = readings.flatMap((one, index) => {
          const next = readings[index + 1];
          if (next === undefined) return [one];
          const half = { atS: minutes(index + 0.5), tempC: celsius((one.tempC + next.tempC) / 2) };
          return [one, half];
        });
        expect(kill(denser).logs).toBeCloseTo(kill(readings).logs, 4);
      }),
    );
  });

  it('readings that are left out never add kill on a cook that only rises', () => {
    const nth = fc.integer({ min: 11, max: 30 });
    const length = fc.integer({ min: 2, max: 120 });
    fc.assert(
      fc.property(length, nth, (count, every) => {
        const rising = curveF((minute) => 130 + minute * 0.4, { minutes: count });
        const sparse = rising.filter((_, index) => index % every === 0);
        expect(kill(sparse).logs).toBeLessThanOrEqual(kill(rising).logs);
      }),
    );
  });
});

describe('the words for a kind', () => {
  it.each([
    ['whole', 'intact'],
    ['Needled', 'injected'],
    ['sausage', 'ground'],
    ['roast', 'roast'],
    // Not said to be whole.
    ['pork', 'injected'],
  ])('%s is %s', (word, kind) => {
    expect(kindNamed(word)).toEqual({ ok: true, kind });
  });

  it('that there are not are told, with what was likely meant', () => {
    expect(kindNamed('chiken')).toMatchObject({ ok: false, meant: 'chicken' });
    expect(kindNamed('stone')).not.toHaveProperty('kind');
  });
});

describe('a file, read and reckoned', () => {
  it('gives the figures of its readings', () => {
    const lines = Array.from({ length: 61 }, (_, minute) => `${minute},${130 + 0.25 * minute}`);
    const read = readLog(`time,temperature_F\n${lines.join('\n')}`);
    if (!read.ok) throw new Error('not read');
    expect(safetyOfProbes(read.probes, 'roast', foodCode).lethality_log).toBeCloseTo(31.02, 2);
  });
});
