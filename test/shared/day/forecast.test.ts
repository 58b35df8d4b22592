import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { forecast, MODEL_VERSION, smokerPriors } from '../../../shared/cook/index.ts';
import { foreseenLengthS } from '../../../shared/day/foreseen.ts';
import {
  type AdoptedForecast,
  adoptedFrom,
  type CookAsk,
  calibrationOf,
  cookAskOf,
  decideForecast,
  forecastOf,
  isNewsOfCook,
  openLive,
  passagesOf,
} from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { Instant } from '../../../shared/kernel/index.ts';
import {
  after,
  celsius,
  hours,
  instant,
  minutes,
  must,
  seconds,
} from '../../../shared/kernel/index.ts';
import { plan, Telling, task } from './demo.ts';

const batch = must(
  plan.built.batches.find(({ cut }) => cut === 'shoulder'),
  'a batch of shoulders',
).id;
const stay = must(
  plan.built.tasks.find((each) => each.batch === batch && each.work === 'place'),
  'a stay',
).id;
const smoke = task(batch, 'smoke');
const index = indexOf(plan);

/** The invented crew's day up to so many hours after the shoulders began to smoke. */
function loaded(hoursIn = 0) {
  const telling = new Telling();
  const { startS } = must(index.placements.get(smoke), smoke);
  const now = after(plan.built.origin, seconds(startS + minutes(10) + hours(hoursIn)));
  for (const { at, intent, personId } of demoLog(plan, { now, seed: 1 })) {
    telling.ask(intent, at, personId);
  }
  const began = passagesOf(telling.state).get(smoke)?.startedAt;
  return { telling, startedAt: must(began, 'a beginning') };
}

const core = { kind: 'core', stay } as const;

function read(telling: Telling, at: Instant, tempC: number) {
  return telling.ask({ kind: 'reading', where: core, tempC: celsius(tempC) }, at);
}

const askAt = (telling: Telling, at: Instant) =>
  must(cookAskOf(telling.state, index, stay, at), 'something to ask');

function found(ask: CookAsk): AdoptedForecast {
  const options = { ...ask.options, members: 40 };
  const made = forecast(ask.piece, ask.smoker, ask.readings, options);
  return adoptedFrom(ask, made.ok ? made.forecast : null, MODEL_VERSION);
}

function adopt(telling: Telling, at: Instant) {
  const ask = askAt(telling, at);
  const decision = decideForecast(telling.state, ask.key, found(ask));
  if (decision.ok) for (const fact of decision.facts) telling.keep(fact, at, null);
  return decision;
}

describe('what is asked about a load in the fire', () => {
  it('is nothing before its core was read: the catalogue’s range knows as much', () => {
    const { telling, startedAt } = loaded();
    expect(cookAskOf(telling.state, index, stay, after(startedAt, hours(1)))).toBeNull();
    read(telling, after(startedAt, hours(2)), 40);
    expect(cookAskOf(telling.state, index, stay, after(startedAt, hours(2)))).not.toBeNull();
  });

  it('counts its times from when it went in, and has the checks of its route as targets', () => {
    const { telling, startedAt } = loaded();
    read(telling, after(startedAt, hours(2)), 40);
    const { piece, readings, options } = askAt(telling, after(startedAt, hours(3)));
    expect(options.nowS).toBe(hours(3));
    expect(readings).toEqual([{ atS: hours(2), tempC: 40, by: 'probe' }]);
    expect(piece.targets.map(({ tempC }) => Math.round((tempC * 9) / 5 + 32))).toEqual([160, 205]);
    expect(piece.stays.map(({ from, wrap }) => [from.by, wrap])).toEqual([
      ['time', 'none'],
      ['core', 'paper'],
    ]);
  });

  it('has the air of its smoker as it was read, and where it was moved to', () => {
    const { telling, startedAt } = loaded();
    read(telling, after(startedAt, hours(1)), 20);
    const before = askAt(telling, after(startedAt, hours(1)));
    const air = { kind: 'air', smoker: before.smoker.id as never } as const;
    telling.ask({ kind: 'reading', where: air, tempC: celsius(112) }, after(startedAt, hours(2)));
    const warmer = askAt(telling, after(startedAt, hours(2)));
    expect(warmer.key).not.toBe(before.key);
    expect(warmer.smoker.log.at(-1)).toMatchObject({ atS: hours(2), tempC: 112 });
    const other = must(
      plan.kitchen.smokers.find(({ id }) => id !== before.smoker.id),
      'another smoker',
    );
    const to = must(other.racks[0], 'a rack').slot;
    const moves = [{ stay, need: 0, to }];
    telling.keep({ kind: 'slotsMoved', moves }, after(startedAt, hours(3)), null);
    const { piece } = askAt(telling, after(startedAt, hours(3)));
    const moved = piece.stays.find(({ place }) => place.kind === 'smoker');
    expect(moved?.from).toEqual({ by: 'time', atS: hours(3) });
    expect(moved?.place).toMatchObject({ smoker: { id: other.id } });
  });

  it('begins from the air of a fan where the kitchen says that its smoker has one', () => {
    const { telling, startedAt } = loaded();
    read(telling, after(startedAt, hours(2)), 40);
    const at = after(startedAt, hours(2));
    const { smoker } = askAt(telling, at);
    expect(smoker.prior).toBe(smokerPriors.draught);
    const smokers = plan.kitchen.smokers.map((each) =>
      each.id === smoker.id ? { ...each, air: 'fan' as const } : each,
    );
    const fanned = { ...plan, kitchen: { ...plan.kitchen, smokers } };
    const state = { ...telling.state, plan: fanned };
    const ask = must(cookAskOf(state, indexOf(fanned), stay, at), 'something to ask');
    expect(ask.smoker.prior).toBe(smokerPriors.fan);
  });

  it('is the same while only the clock goes on', () => {
    const { telling, startedAt } = loaded();
    read(telling, after(startedAt, hours(2)), 40);
    const first = askAt(telling, after(startedAt, hours(2)));
    expect(askAt(telling, after(startedAt, hours(3))).key).toBe(first.key);
  });

  it('leaves out what a probe showed that fell out', () => {
    const { telling, startedAt } = loaded();
    for (const [hour, tempC] of [
      [1, 20],
      [2, 40],
      [2.5, 101],
      [3, 52],
    ] as const) {
      read(telling, after(startedAt, hours(hour)), tempC);
    }
    const { readings } = askAt(telling, after(startedAt, hours(3)));
    expect(readings.map(({ tempC }) => tempC)).toEqual([20, 40, 52]);
  });
});

describe('a forecast that is taken up', () => {
  it('re-times the stage to its middle, and calls the check from one in ten on', () => {
    const { telling, startedAt } = loaded(3);
    const at = after(startedAt, hours(3));
    read(telling, at, 48);
    const live = openLive(telling.state, at);
    adopt(telling, at);
    const stands = must(forecastOf(telling.state, stay), 'a forecast');
    const [first, last] = stands.stages;
    live.apply(must(telling.events.at(-1), 'an event'));
    const range = live.endRangeOf(smoke);
    expect(live.instantOf(live.timesOf(smoke).endS)).toBeCloseTo(must(first?.p50At, 'p50'), -4);
    expect(live.instantOf(range.lowS)).toBeCloseTo(must(first?.p10At, 'p10'), -4);
    expect(live.instantOf(range.highS)).toBeCloseTo(must(first?.p90At, 'p90'), -4);
    const finish = live.timesOf(must(last, 'a last stage').stage);
    const leastS = (must(last?.p50At, 'p50') - must(first?.p50At, 'p50')) / 1000;
    expect(finish.endS - finish.startS).toBeCloseTo(leastS, -1);
    expect(stands.isCalibrated).toBe(false);
  });

  it('moves what hangs on it, and gives the same times when the day is told again', () => {
    const { telling, startedAt } = loaded(3);
    const at = after(startedAt, hours(3));
    const service = must(index.batches.get(batch), batch).service;
    const before = openLive(telling.state, at).outlookOf(service);
    read(telling, at, 30);
    const live = openLive(telling.state, at);
    adopt(telling, at);
    live.apply(must(telling.events.at(-1), 'an event'));
    expect(live.outlookOf(service)?.inHandS).toBeLessThan(must(before, service).inHandS);
    const again = openLive(telling.state, at);
    for (const { id } of plan.built.tasks) expect(again.timesOf(id)).toEqual(live.timesOf(id));
  });

  it('is dropped where the load has moved on since it was asked', () => {
    const { telling, startedAt } = loaded(3);
    const at = after(startedAt, hours(3));
    read(telling, at, 48);
    const ask = askAt(telling, at);
    const made = found(ask);
    read(telling, after(at, minutes(1)), 49);
    expect(decideForecast(telling.state, ask.key, made)).toEqual({ ok: true, facts: [] });
  });

  it('says nothing for a fire that went out since', () => {
    const { telling, startedAt } = loaded(3);
    const at = after(startedAt, hours(3));
    read(telling, at, 48);
    adopt(telling, at);
    const smoker = askAt(telling, at).smoker.id as never;
    const soon = after(at, minutes(10));
    telling.ask({ kind: 'smokerDown', smoker, tempC: celsius(60), backAt: null }, soon);
    expect(cookAskOf(telling.state, index, stay, soon)).toBeNull();
    const later = after(at, hours(9));
    const live = openLive(telling.state, later);
    expect(live.timesOf(smoke).endS).toBeGreaterThanOrEqual(live.nowS);
    const { highS } = live.endRangeOf(smoke);
    const { p90At } = must(forecastOf(telling.state, stay)?.stages[0], 'a stage');
    expect(live.instantOf(highS)).not.toBe(p90At);
  });

  it('nor for a load that was moved out of a smoker when its fire was out', () => {
    const { telling, startedAt } = loaded(3);
    const at = after(startedAt, hours(3));
    read(telling, at, 48);
    adopt(telling, at);
    const smoker = askAt(telling, at).smoker.id;
    expect(foreseenLengthS(telling.state, index, smoke)).not.toBeNull();
    const down = { smoker: smoker as never, tempC: celsius(60), backAt: null };
    telling.ask({ kind: 'smokerDown', ...down }, after(at, minutes(10)));
    const others = index.plan.kitchen.smokers.filter(({ id }) => id !== smoker);
    const to = must(others[0]?.racks[0], 'a rack').slot;
    const moved = after(at, minutes(40));
    telling.keep({ kind: 'slotsMoved', moves: [{ stay, need: 0, to }] }, moved, null);
    expect(foreseenLengthS(telling.state, index, smoke)).toBeNull();
  });
});

describe('what is worth moving a time for', () => {
  const now = instant(0);
  const inMin = (min: number | null) => (min === null ? null : after(now, minutes(min)));
  const of = (p10: number, p50: number | null, p90: number | null, never = 0): AdoptedForecast => ({
    stay,
    modelVersion: 1,
    seed: 1,
    madeAt: now,
    startedAt: now,
    lastReadingAt: now,
    wrap: 'none',
    isCalibrated: false,
    fan: [],
    stages: [
      {
        stage: smoke,
        tempC: celsius(71),
        ...{ p10At: inMin(p10), p50At: inMin(p50), p90At: inMin(p90) },
        never,
        raw: null,
      },
    ],
  });
  const stands = of(200, 300, 400);

  it.each([
    ['nothing at all', stands, false],
    ['the middle by less than a twelfth of what is left', of(200, 320, 400), false],
    ['the middle by more', of(200, 327, 400), true],
    ['an end by less than a sixth', of(160, 300, 440), false],
    ['an end by more', of(140, 300, 400), true],
    ['the chance of never by a little', of(200, 300, 400, 0.06), false],
    ['the chance of never by more', of(200, 300, 400, 0.15), true],
    ['a late end that is no longer sure to come', of(200, 300, null), true],
    ['that nothing can be said any more', { ...stands, stages: [] }, true],
    ['that the kitchen is known by now', { ...stands, isCalibrated: true }, true],
  ])('%s', (_what, other, isNews) => {
    expect(isNewsOfCook(stands, other)).toBe(isNews);
  });

  it('is five minutes of the middle where little is left', () => {
    expect(isNewsOfCook(of(10, 20, 30), of(10, 24, 30))).toBe(false);
    expect(isNewsOfCook(of(10, 20, 30), of(10, 25, 30))).toBe(true);
  });

  it('does not flicker with what goes to and fro, and is not blind to what drifts', () => {
    const adoptions = (middles: readonly number[]) => {
      let last = stands;
      let count = 0;
      for (const middle of middles) {
        const next = of(middle - 100, middle, middle + 100);
        if (!isNewsOfCook(last, next)) continue;
        last = next;
        count++;
      }
      return { count, at: (must(last.stages[0]?.p50At, 'p50') - now) / 60_000 };
    };
    const wavering = Array.from({ length: 40 }, (_, i) => 300 + (i % 2 ? 15 : -15));
    expect(adoptions(wavering).count).toBe(0);
    const drifting = Array.from({ length: 60 }, (_, i) => 300 + 2 * i);
    expect(Math.abs(adoptions(drifting).at - 418)).toBeLessThan(35);
    expect(adoptions(drifting).count).toBeLessThan(6);
  });
});

describe('a kitchen’s record', () => {
  it('has of a day that is over what was foreseen and how it came', () => {
    const { telling, startedAt } = loaded();
    for (const [hour, tempC] of [
      [2, 36],
      [4, 62],
      [6, 66],
    ] as const) {
      const at = after(startedAt, hours(hour));
      read(telling, at, tempC);
      adopt(telling, at);
    }
    const shownAt = after(startedAt, hours(7));
    read(telling, shownAt, 72);
    telling.ask({ kind: 'start', task: task(batch, 'colour') }, after(shownAt, minutes(5)));
    const made = must(telling.state.forecasts.get(stay), 'forecasts').length;
    const event = telling.keep({ kind: 'planAdopted', plan }, after(startedAt, hours(20)), null);
    expect(event.day).toBe(telling.state.day);
    expect(telling.state.record).toEqual([]);
    const tomorrow = { ...plan, built: { ...plan.built, day: '2026-03-05' } };
    telling.nextDay(tomorrow, after(startedAt, hours(21)));
    const { record } = telling.state;
    expect(record).toHaveLength(made);
    for (const outcome of record) {
      expect(outcome).toMatchObject({ wrap: 'paper', passedS: hours(7) });
      expect(outcome.madeAtS).toBeLessThan(hours(7));
    }
    expect(new Set(record.map(({ cookId }) => cookId)).size).toBe(1);
    expect(calibrationOf(telling.state)).toEqual({ cooks: 1, enough: 30 });
  });
});
