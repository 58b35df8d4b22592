import type { Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import { tooLong } from './judgement.ts';
import type { PrintedTemp } from './printed.ts';
import { amountOf, degrees, degreesIn } from './printed.ts';
import type { Series, Stretch } from './readings.ts';
import { highestC, stretchesOf } from './readings.ts';
import type { LimitOf } from './row-schema.ts';

export type CoolingStage = {
  readonly to: PrintedTemp;
  /** From the start of the cooling; null while it is not reached. */
  readonly tookS: Seconds | null;
};

/** Food on its way down, once. */
export type Cooling = {
  readonly startS: Seconds;
  /** The readings begin below where the clock starts: it took longer than is known. */
  readonly begunBefore: boolean;
  readonly stages: readonly CoolingStage[];
  /** `reheated`: brought back to full heat while there was time, which sets the clock back. */
  readonly state: 'met' | 'missed' | 'open' | 'reheated';
};

type CoolingOptions = {
  readonly errorK?: number;
  readonly apartAtMostS: number;
  /** Hot again from here on means reheated; left out where nothing sets the clock back. */
  readonly reheatTo?: PrintedTemp | undefined;
  /** When the cook was full, if the readings have it: a dip before that is no cooling. */
  readonly notBeforeS?: number | null;
};

/**
 * Every cooling in a series, oldest first. Food that never was as hot as where the clock starts
 * cools from the highest it had. The instrument's error counts against each limit: the clock starts
 * early and a stage is reached late. So does a silence across a limit: the clock starts at its
 * beginning, and a stage is reached at its end.
 */
export function coolingsOf(
  readings: Series,
  limit: LimitOf<'cooling'>,
  options: CoolingOptions,
): Cooling[] {
  const { unit, start, stages, reheated, begunBefore } = levelsOf(readings, limit, options);
  const { apartAtMostS, notBeforeS } = options;
  const done: Cooling[] = [];
  let clock: Clock | null = null;
  let wasHot = false;
  for (const stretch of stretchesOf(readings, { unit, shift: 0, apartAtMostS })) {
    wasHot ||= stretch.from >= start;
    const isBelow = stretch.to < start && stretch.toS > (notBeforeS ?? Number.NEGATIVE_INFINITY);
    if (clock === null && wasHot && isBelow) {
      clock = { startS: startIn(stretch, start), reachedS: [] };
    }
    if (clock === null) continue;
    clock = goneOn(clock, stretch, stages);
    const isReheated = stretch.to >= reheated;
    if (isReheated || clock.reachedS.length === stages.length) {
      done.push(coolingOf(clock, limit, { lastS: stretch.toS, isReheated, begunBefore }));
      clock = null;
      wasHot = isReheated;
    }
  }
  const lastS = readings.at(-1)?.atS ?? 0;
  return clock === null ? done : [...done, coolingOf(clock, limit, { lastS, begunBefore })];
}

/**
 * The cooling that decides: one that was missed before one that is open before one that was met.
 */
export function decidingCooling(coolings: readonly Cooling[]): Cooling | null {
  const order = ['missed', 'open', 'met'] as const;
  return order.flatMap((state) => coolings.filter((one) => one.state === state))[0] ?? null;
}

type Clock = {
  readonly startS: number;
  /** When each stage was reached, as far as they were. */
  readonly reachedS: readonly number[];
};

function levelsOf(
  readings: Series,
  { from, stages }: LimitOf<'cooling'>,
  { errorK = 0, reheatTo, notBeforeS = null }: CoolingOptions,
) {
  const { value, unit } = amountOf(from);
  const error = degreesIn(unit, errorK);
  const levels = stages.map(({ to }) => amountOf(to).value - error);
  const highest = degrees(unit, highestC(readings));
  const [first] = readings;
  const begunBefore =
    highest < value && first !== undefined && degrees(unit, first.tempC) === highest;
  const start = Math.min(value + error, highest);
  // A cook on its way up dips now and then, and food that was never warm does not cool.
  const cools = highest >= value || begunBefore || notBeforeS !== null;
  return {
    unit,
    start: cools && start > (levels[0] ?? start) ? start : Number.POSITIVE_INFINITY,
    stages: levels,
    reheated: reheatTo === undefined ? Number.POSITIVE_INFINITY : amountOf(reheatTo).value + error,
    begunBefore,
  };
}

function startIn(stretch: Stretch, level: number): number {
  return stretch.silent || stretch.from <= level ? stretch.fromS : crossingS(stretch, level);
}

/** Stages lie one below the other, so they are reached in their order. */
function goneOn(clock: Clock, stretch: Stretch, stages: readonly number[]): Clock {
  const level = stages[clock.reachedS.length];
  if (level === undefined || stretch.to > level) return clock;
  const isUnseen = stretch.silent || stretch.from <= level;
  const atS = isUnseen ? stretch.toS : crossingS(stretch, level);
  return goneOn({ ...clock, reachedS: [...clock.reachedS, atS] }, stretch, stages);
}

function crossingS({ fromS, toS, from, to }: Stretch, level: number): number {
  return fromS + ((from - level) / (from - to)) * (toS - fromS);
}

function coolingOf(
  { startS, reachedS }: Clock,
  { stages }: LimitOf<'cooling'>,
  {
    lastS,
    isReheated = false,
    begunBefore,
  }: { lastS: number; isReheated?: boolean; begunBefore: boolean },
): Cooling {
  const isLate = stages.map(
    ({ within }, index) => tooLong(within, seconds((reachedS[index] ?? lastS) - startS)) !== null,
  );
  const state = () => {
    // Reheating mends a stage that was missed, but not after the time for all of them.
    if (isReheated) return isLate.at(-1) === true ? 'missed' : 'reheated';
    if (isLate.includes(true)) return 'missed';
    return reachedS.length === stages.length ? 'met' : 'open';
  };
  return {
    startS: seconds(startS),
    begunBefore,
    state: state(),
    stages: stages.map(({ to }, index) => {
      const atS = reachedS[index];
      return { to, tookS: atS === undefined ? null : seconds(atS - startS) };
    }),
  };
}
