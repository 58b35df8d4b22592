import { describe, expect, it } from 'vitest';
import {
  beginForecast,
  cutPriors,
  type Forecast,
  type Forecasting,
  forecast,
  MODEL_VERSION,
  type Piece,
  rooms,
} from '../../../shared/cook/index.ts';
import { celsius, hours, seconds } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

function made(forecasting: Forecasting): Forecast {
  if (!forecasting.ok) throw new Error(JSON.stringify(forecasting.faults));
  return forecasting.forecast;
}

function target(found: Forecast, id: string) {
  const one = found.targets.find((candidate) => candidate.id === id);
  if (one === undefined) throw new Error(id);
  return { ...one, widthS: (one.p90S ?? Number.NaN) - (one.p10S ?? Number.NaN) };
}

const stalling = hourly(27, 50, 60, 64, 66, 68);

describe('a forecast', () => {
  it('has for each target three times in their order, and the later target later', () => {
    const found = made(forecast(shoulder, smoker, stalling, at(6)));
    for (const id of ['wrap', 'done']) {
      const { p10S = 0, p50S = 0, p90S = 0, equallyLikelyS } = target(found, id);
      expect(p10S).toBeLessThan(p50S);
      expect(p50S).toBeLessThan(p90S);
      expect(equallyLikelyS).toHaveLength(20);
      expect(equallyLikelyS.filter((time) => time !== undefined && time <= p50S)).toHaveLength(10);
    }
    expect(target(found, 'wrap').p50S).toBeLessThan(target(found, 'done').p50S ?? 0);
  });

  it('says by which model, from which seed and up to which reading it was made', () => {
    const found = made(forecast(shoulder, smoker, stalling, at(6.5, 42)));
    expect(found).toMatchObject({
      modelVersion: MODEL_VERSION,
      seed: 42,
      lastReadingS: hours(6),
      members: 80,
      leftOut: 0,
    });
  });

  it('is the same for the same seed, and nearly so for another', () => {
    const first = forecast(shoulder, smoker, stalling, at(6, 1));
    expect(forecast(shoulder, smoker, stalling, at(6, 1))).toEqual(first);
    const other = forecast(shoulder, smoker, stalling, at(6, 2));
    expect(other).not.toEqual(first);
    const [a = 0, b = 0] = [first, other].map((one) => target(made(one), 'done').p50S);
    expect(Math.abs(a - b)).toBeLessThan(2 * 3600);
  });

  it('is the surer the more of the cook it has seen', () => {
    const widths = [0, 4, 8].map((hour) => {
      const seen = hourly(27, 50, 60, 64, 66, 68, 73, 80).slice(0, hour);
      return target(made(forecast(shoulder, smoker, seen, at(hour))), 'done').widthS;
    });
    expect(widths[1]).toBeLessThan(widths[0] ?? 0);
    expect(widths[2]).toBeLessThan(widths[1] ?? 0);
  });

  it('says the time of the reading for a target that a reading has shown', () => {
    const found = made(forecast(shoulder, smoker, hourly(30, 55, 68, 74), at(4)));
    const { p10S, p50S, p90S, never } = target(found, 'wrap');
    expect([p10S, p50S, p90S]).toEqual([hours(4), hours(4), hours(4)]);
    expect(never).toBe(0);
  });

  it('never lies before the last reading for a target that none has shown', () => {
    const found = made(forecast(shoulder, smoker, hourly(30, 55, 68, 71.9), at(4)));
    expect(target(found, 'wrap').p10S).toBeGreaterThanOrEqual(hours(4));
  });

  it('draws the cook from the beginning and the fan from now, one inside the other', () => {
    const found = made(forecast(shoulder, smoker, stalling, at(6)));
    expect(found.curve[0]).toMatchObject({ atS: 0, evaporatedShare: 0 });
    expect(found.curve[0]?.coreC).toBeCloseTo(5, 6);
    expect(found.fan[0]?.atS).toBe(hours(6));
    expect(Math.abs((found.fan[0]?.p50C ?? 0) - 68)).toBeLessThan(1.5);
    for (const { p10C, p50C, p90C } of found.fan) {
      expect(p10C).toBeLessThanOrEqual(p50C);
      expect(p50C).toBeLessThanOrEqual(p90C);
    }
    const last = found.curve.at(-1);
    expect(last?.evaporatedShare).toBeGreaterThan(0.08);
    expect(last?.evaporatedShare).toBeLessThan(0.45);
  });

  it('says that it is not yet calibrated in a kitchen without a past', () => {
    expect(made(forecast(shoulder, smoker, [], at(0))).isCalibrated).toBe(false);
  });
});

describe('what is done with a piece', () => {
  const wrapped = (atH: number): Piece => ({
    ...shoulder,
    stays: [
      ...shoulder.stays,
      { from: { by: 'time', atS: hours(atH) }, place: { kind: 'home' }, wrap: 'foil' },
    ],
  });
  const p50H = (piece: Piece, setC = 115, hour = 6) => {
    const found = forecast(piece, { ...smoker, setC: celsius(setC) }, stalling, at(hour));
    return (target(made(found), 'done').p50S ?? Number.NaN) / 3600;
  };

  it('a wrap in foil at the stall brings the end nearer, as does a hotter fire', () => {
    expect(p50H(wrapped(6))).toBeLessThan(p50H(shoulder));
    expect(p50H(shoulder, 125)).toBeLessThan(p50H(shoulder, 115));
  });

  it('a move to a hotter smoker brings it nearer than to a cooler one', () => {
    const moved = (setC: number): Piece => ({
      ...shoulder,
      stays: [
        ...shoulder.stays,
        {
          from: { by: 'time', atS: hours(6) },
          place: { kind: 'smoker', smoker: { ...smoker, id: 'other', setC: celsius(setC) } },
          wrap: 'none',
        },
      ],
    });
    expect(p50H(moved(130))).toBeLessThan(p50H(moved(108)));
    const found = made(forecast(moved(130), smoker, stalling, at(6)));
    expect(found.saysOfSmokers.map(({ id }) => id)).toEqual(['pit', 'other']);
  });

  it('a wrap that waits for the core has not been made before now', () => {
    const waiting: Piece = {
      ...shoulder,
      stays: [
        ...shoulder.stays,
        { from: { by: 'core', tempC: celsius(60) }, place: { kind: 'home' }, wrap: 'foil' },
      ],
    };
    // The core is past 60 °C since three hours; the wrap is made now, not then.
    expect(p50H(waiting)).toBeCloseTo(p50H(wrapped(6)), 1);
  });

  it('after the end it cools on the bench, and the way down is foreseen too', () => {
    const rested: Piece = {
      ...shoulder,
      stays: [
        ...shoulder.stays,
        {
          from: { by: 'core', tempC: celsius(96) },
          place: { kind: 'room', room: rooms.bench },
          wrap: 'foil',
        },
      ],
      targets: [...shoulder.targets, { id: 'slice', tempC: celsius(71), way: 'falling' }],
    };
    const found = made(forecast(rested, smoker, stalling, at(6)));
    const [done, slice] = [target(found, 'done'), target(found, 'slice')];
    expect(slice.p50S).toBeGreaterThan((done.p50S ?? 0) + 3600);
    expect(slice.p50S).toBeLessThan((done.p50S ?? 0) + 12 * 3600);
  });
});

describe('a fire that will not do', () => {
  it('gives a chance of never, and no time that it does not have', () => {
    const low = { ...smoker, setC: celsius(97) };
    const { never, p50S, p90S } = target(made(forecast(shoulder, low, [], at(0))), 'done');
    expect(never).toBeGreaterThan(0.5);
    expect(p50S).toBeUndefined();
    expect(p90S).toBeUndefined();
  });
});

describe('a member that diverges', () => {
  const conducting = (median: number): Piece => {
    const { composition, unknowns } = cutPriors.shoulder;
    const conductivity = { ...unknowns.conductivity, scale: 'shift' as const, median, spread: 0.6 };
    return { ...shoulder, cut: { composition, unknowns: { ...unknowns, conductivity } } };
  };

  it('is counted and left out of everything', () => {
    // Some members conduct heat the wrong way: no meat of this world.
    const found = made(forecast(conducting(1), smoker, [], at(0)));
    expect(found.leftOut).toBeGreaterThan(0);
    expect(found.members + found.leftOut).toBe(80);
    expect(target(found, 'done').p10S).toBeGreaterThan(2 * 3600);
    for (const { p90C } of found.fan) expect(p90C).toBeLessThan(130);
  });

  it('leaves nothing to be said where most do', () => {
    const found = forecast(conducting(-1), smoker, [], at(0));
    expect(found).toEqual({ ok: false, faults: [{ rule: 'no-balance', members: 80 }] });
  });
});

describe('a forecast as a job', () => {
  it('can be put down and taken up again at any member, and comes to the same', () => {
    const job = beginForecast(shoulder, smoker, stalling, at(6));
    let turns = 0;
    let found: Forecasting | undefined;
    while (found === undefined) {
      let members = 0;
      found = job.advance(() => members++ >= 7);
      turns++;
    }
    // Four updates and a last run of eighty members, seven at a time.
    expect(turns).toBeGreaterThan(50);
    expect(found).toEqual(forecast(shoulder, smoker, stalling, at(6)));
  });

  it('answers nothing as long as it is told to stop', () => {
    const job = beginForecast(shoulder, smoker, [], at(0));
    expect(job.advance(() => true)).toBeUndefined();
    expect(job.advance(() => false)).toBeDefined();
  });

  it('is over at once where nothing can be computed', () => {
    const job = beginForecast({ ...shoulder, stays: [] }, smoker, [], at(0));
    expect(job.advance(() => false)).toEqual({ ok: false, faults: [{ rule: 'no-first-stay' }] });
  });
});

describe('readings that come in any order', () => {
  it('count by their time', () => {
    const shuffled = [...stalling].reverse();
    const ordered = forecast(shoulder, smoker, stalling, at(6));
    expect(forecast(shoulder, smoker, shuffled, at(6))).toEqual(ordered);
  });

  it('every minute make it no surer than physics allows', () => {
    const everyMinute = Array.from({ length: 61 }, (_, i) => ({
      atS: seconds(5 * 3600 + 60 * i),
      tempC: celsius(66 + i / 30),
      by: 'probe' as const,
    }));
    const dense = [...stalling.slice(0, 4), ...everyMinute];
    const widths = [stalling, dense].map(
      (readings) => target(made(forecast(shoulder, smoker, readings, at(6))), 'done').widthS,
    );
    expect(widths[1]).toBeGreaterThan(0.6 * (widths[0] ?? 0));
  });
});
