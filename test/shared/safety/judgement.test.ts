import { describe, expect, it } from 'vitest';
import { celsius, hours, seconds } from '../../../shared/kernel/index.ts';
import type { Judgement, Profile } from '../../../shared/safety/index.ts';
import {
  emptyCode,
  foodCode,
  judgeAbove,
  judgeCleaning,
  judgeColdHold,
  judgeComeUp,
  judgeDateMark,
  judgeEndTemperature,
  judgeFirstHeat,
  judgeHotHold,
  judgeNitrite,
  judgeOutOfTemperature,
  judgeProbePlace,
  judgeReceiving,
  judgeReheat,
  judgeThermometer,
  judgeTimeControl,
  kinds,
  profiles,
  rowsOf,
  variancesOf,
} from '../../../shared/safety/index.ts';
import { degF } from './series.ts';

/** The best that any kitchen could show, held against each rule. */
const best = (profile: Profile): Readonly<Record<string, Judgement>> => ({
  receiving: judgeReceiving(profile, { coreC: celsius(1) }),
  'cold hold': judgeColdHold(profile, { coreC: celsius(1) }),
  'hot hold': judgeHotHold(profile, { coreC: celsius(90) }),
  'hot hold of a roast': judgeHotHold(profile, { coreC: celsius(90), byRoastTable: true }),
  'end of a cook': judgeEndTemperature(profile, {
    kind: 'chicken',
    coreC: celsius(95),
    heldS: hours(1),
  }),
  'come-up': judgeComeUp(profile, seconds(1)),
  'first heat': judgeFirstHeat(profile, seconds(1)),
  reheat: judgeReheat(profile, {
    way: 'oven',
    coreC: celsius(95),
    heldS: hours(1),
    tookS: seconds(1),
  }),
  'out of temperature': judgeOutOfTemperature(profile, seconds(0)),
  'time control': judgeTimeControl(profile, {
    row: 'time-control-4h',
    startC: celsius(1),
    warmestC: celsius(1),
    elapsedS: seconds(0),
  }),
  'date mark': judgeDateMark(profile, { madeOn: '2026-11-25', usedOn: '2026-11-25' }),
  cleaning: judgeCleaning(profile, seconds(0)),
  thermometer: judgeThermometer(profile, { measures: 'food', shownC: celsius(0) }),
  nitrite: judgeNitrite(profile, { method: 'dry', ppm: 150 }),
});

describe('a profile that nobody has filled in', () => {
  it.each(Object.entries(best(emptyCode)))(
    'refuses the best %s, and says that it has no limit',
    (_, judged) => {
      if (judged.ok)
        expect(judged.warnings).toMatchObject([{ limit: null, row: { id: 'come-up' } }]);
      else expect(judged).toMatchObject({ limit: null, row: { sure: 'not filled in' } });
    },
  );

  it('refuses a rule that the profile does not have at all', () => {
    const bare: Profile = { ...foodCode, rows: [] };
    for (const judged of Object.values(best(bare))) expect(judged.ok).toBe(false);
    expect(variancesOf(bare, ['curing'])).toHaveLength(1);
  });

  it('keeps what is limited, and drops every figure and its source', () => {
    expect(emptyCode.rows.map(({ id }) => id)).toEqual(foodCode.rows.map(({ id }) => id));
    expect(
      emptyCode.rows.every(({ limit, source }) => limit === null && source === 'not filled in'),
    ).toBe(true);
  });
});

describe('the common food code', () => {
  it.each(Object.entries(best(foodCode)))('accepts the best %s', (_, judged) => {
    expect(judged).toEqual({ ok: true, warnings: [] });
  });

  it('has one row and no more for the end of a cook of each kind', () => {
    for (const kind of kinds) expect(rowsOf(foodCode, 'end-temperature', { kind })).toHaveLength(1);
  });
});

describe('every profile', () => {
  it.each(profiles)(
    '$id names the source, the edition and the sureness of each row',
    ({ rows }) => {
      for (const row of rows) {
        expect(row.source.length * row.edition.length).toBeGreaterThan(0);
        expect(row.limit === null).toBe(row.sure === 'not filled in');
      }
    },
  );

  it.each(profiles)('$id gives no two rows one name', ({ rows }) => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });

  it.each(profiles)(
    '$id says what it limits without a figure, which would not change with it',
    ({ rows }) => {
      for (const { what } of rows) {
        expect(`${what.en} ${what.es ?? ''}`).not.toMatch(/\d/);
      }
    },
  );
});

describe('a temperature', () => {
  it('that was read in the unit of the limit keeps it to the last digit', () => {
    for (let tenths = 1300; tenths <= 1700; tenths++) {
      const tempF = tenths / 10;
      expect(judgeHotHold(foodCode, { coreC: degF(tempF) }).ok).toBe(tempF >= 135);
    }
  });

  it('in °C is held against °F as printed, so that 57 °C is not 135 °F', () => {
    expect(judgeHotHold(foodCode, { coreC: celsius(57) })).toMatchObject({
      ok: false,
      measured: { value: 134.6, unit: '°F' },
      limit: { value: 135, unit: '°F' },
    });
  });

  it('of a cooler is held against a limit that the thermometer’s error has moved down', () => {
    const taken = { coreC: celsius(4), errorK: 1 };
    expect(judgeColdHold(foodCode, taken).ok).toBe(true);
    expect(judgeColdHold(foodCode, { ...taken, errorK: 1.5 })).toMatchObject({
      limit: { value: expect.closeTo(38.3, 6), unit: '°F' },
    });
  });
});

describe('a row for another kind', () => {
  it('does not speak', () => {
    expect(judgeProbePlace(foodCode, { kind: 'fish', place: 'surface' }).ok).toBe(true);
  });

  it('is not taken for one that is missing', () => {
    const oven = rowsOf(foodCode, 'reheat').filter(({ way }) => way === 'oven');
    const profile: Profile = { ...foodCode, rows: oven };
    const microwave = {
      way: 'microwave',
      coreC: celsius(99),
      heldS: hours(1),
      tookS: seconds(1),
    } as const;
    expect(judgeReheat(profile, microwave)).toMatchObject({ ok: false, limit: null });
  });
});

describe('what lies above what', () => {
  const rawChicken = { kind: 'chicken', raw: true } as const;
  const rawRibs = { kind: 'intact', raw: true } as const;
  const readyRibs = { kind: 'intact', raw: false } as const;

  it('is refused where raw may drip on food that is past its lethality step', () => {
    expect(judgeAbove(foodCode, rawRibs, readyRibs)).toMatchObject({
      ok: false,
      row: { id: 'raw-above-ready' },
      measured: null,
      correctiveActions: ['move-below', 'load-apart'],
    });
  });

  it('is refused where raw poultry lies above anything but raw poultry', () => {
    expect(judgeAbove(foodCode, rawChicken, rawRibs)).toMatchObject({
      ok: false,
      row: { id: 'raw-poultry-above' },
    });
    expect(judgeAbove(foodCode, rawChicken, rawChicken).ok).toBe(true);
  });

  it('is free where ready lies above raw, and poultry at the bottom', () => {
    expect(judgeAbove(foodCode, readyRibs, rawChicken).ok).toBe(true);
    expect(judgeAbove(foodCode, rawRibs, rawChicken).ok).toBe(true);
    expect(judgeAbove(foodCode, { kind: 'turkey', raw: false }, readyRibs).ok).toBe(true);
  });
});
