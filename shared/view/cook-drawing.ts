import type { ForeseenCore, ForeseenStage, Live } from '../day/index.ts';
import { coresOf, forecastOf, openedOn, stepsOf } from '../day/index.ts';
import type { Celsius, Instant, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';

/** The cook of a load, to be drawn: what its core has shown, and what it may. */
export type CookDrawing = {
  readonly startedAt: Instant;
  readonly cores: readonly { readonly at: Instant; readonly tempC: Celsius }[];
  readonly fan: readonly ForeseenCore[];
  readonly stages: readonly Pick<ForeseenStage, 'tempC' | 'p10At' | 'p50At' | 'p90At' | 'never'>[];
  /** Where something was put round it. */
  readonly wrappedAt: Instant | null;
  /** When the door was opened on it, as somebody told or as the air showed. */
  readonly openedAt: readonly Instant[];
  readonly isCalibrated: boolean;
};

/** No screen shows more points than this. */
const MOST_CORES = 40;

/** What there is to draw of a load's cook; null before anything is foreseen of it. */
export function cookDrawing(live: Live, stay: TaskId): CookDrawing | null {
  const made = forecastOf(live.state, stay);
  if (!made) return null;
  const { startedAt, fan, isCalibrated } = made;
  const cores = coresOf(live.state, stay).filter(({ at }) => at >= startedAt);
  const step = Math.max(1, cores.length / MOST_CORES);
  return {
    ...{ startedAt, fan, isCalibrated },
    cores: cores
      .filter((_, i) => Math.floor(i / step) !== Math.floor((i - 1) / step))
      .map(({ at, tempC }) => ({ at, tempC })),
    stages: made.stages.map(({ tempC, p10At, p50At, p90At, never }) => ({
      ...{ tempC, p10At, p50At, p90At, never },
    })),
    wrappedAt: wrappedAt(live, stay),
    openedAt: openedOn(live.state, live.index, stay, startedAt),
  };
}

function wrappedAt({ state, index }: Live, stay: TaskId): Instant | null {
  const { batch } = must(index.tasks.get(stay), stay);
  const steps = stepsOf(index, batch);
  const wraps = steps.flatMap((step) => (step.work === 'hands' && step.wraps ? [step.id] : []));
  const done = [...index.tasks.values()].find(
    (task) =>
      task.batch === batch && wraps.includes(task.step) && state.tasks.get(task.id)?.started,
  );
  return (done && state.tasks.get(done.id)?.started?.at) ?? null;
}

/** A point of a picture: along and down, each from 0 to 1. */
type Point = readonly [x: number, y: number];

/** The same as lines, in shares of the picture's width and height. */
export type CookLines = {
  readonly cores: readonly Point[];
  /** Round the fan, from its beginning over P90 and back under P10. */
  readonly fan: readonly Point[];
  readonly middle: readonly Point[];
  readonly targets: readonly {
    readonly y: number;
    readonly tempC: Celsius;
    readonly low: number | null;
    readonly mid: number | null;
    readonly high: number | null;
    /** The core has been as hot. */
    readonly isPassed: boolean;
  }[];
  readonly wrapped: number | null;
  readonly opened: readonly number[];
  readonly now: number;
};

/** A stretch of time that is drawn. */
type Hours = { readonly from: Instant; readonly to: Instant };

/** Degrees that a picture leaves above the last target, and begins with. */
const ROOM_K = 8;

/**
 * Where each line of a cook's picture runs: from when it went in until it is likely done, or over
 * the hours that others share with it, where only the degrees from now on are of interest.
 */
export function cookLines(cook: CookDrawing, now: Instant, on: Hours | null = null): CookLines {
  const { fan, stages } = cook;
  const startedAt = on?.from ?? cook.startedAt;
  const ends = stages.map(({ p90At, p50At, p10At }) => p90At ?? p50At ?? p10At ?? now);
  const last = on?.to ?? Math.max(now, ...ends, ...cook.cores.map(({ at }) => at));
  const isWithin = (at: Instant) => at >= startedAt && at <= last;
  const cores = cook.cores.filter(({ at }) => isWithin(at));
  const coldest = [...cores.map(({ tempC }) => tempC), ...fan.slice(0, 1).map(({ p10C }) => p10C)];
  const low = on
    ? Math.min(...coldest, ...stages.map(({ tempC }) => tempC))
    : Math.min(0, ...coldest);
  const hottest = Math.max(...cook.cores.map(({ tempC }) => tempC));
  const high = Math.max(...stages.map(({ tempC }) => tempC), hottest);
  const x = (at: Instant) => Math.min(1, Math.max(0, (at - startedAt) / (last - startedAt)));
  const y = (tempC: number) => Math.max(0, 1 - (tempC - low) / (high + ROOM_K - low));
  const seen = fan.filter(({ at }) => isWithin(at));
  const along = (of: 'p10C' | 'p50C' | 'p90C') =>
    seen.map((each): Point => [x(each.at), y(each[of])]);
  return {
    cores: cores.map(({ at, tempC }): Point => [x(at), y(tempC)]),
    fan: [...along('p90C'), ...along('p10C').reverse()],
    middle: along('p50C'),
    targets: stages.map(({ tempC, p10At, p50At, p90At }) => ({
      ...{ y: y(tempC), tempC, isPassed: hottest >= tempC },
      low: p10At && x(p10At),
      mid: p50At && x(p50At),
      high: p90At && x(p90At),
    })),
    wrapped: cook.wrappedAt && isWithin(cook.wrappedAt) ? x(cook.wrappedAt) : null,
    opened: cook.openedAt.filter(isWithin).map(x),
    now: x(now),
  };
}
