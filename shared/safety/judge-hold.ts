import type { Celsius, LocalDay, Seconds } from '../kernel/index.ts';
import { addDays, daysBetween, hours } from '../kernel/index.ts';
import type { Judgement, Miss } from './judgement.ts';
import { judge, tooCold, tooLong, tooWarm } from './judgement.ts';
import type { PrintedTemp } from './printed.ts';
import { secondsOf } from './printed.ts';
import type { Profile } from './profile.ts';
import { limitOf } from './profile.ts';

type Taken = { readonly coreC: Celsius; readonly errorK?: number };

/** Whether chilled food that comes in is cold enough to be taken. */
export function judgeReceiving(profile: Profile, { coreC, errorK }: Taken): Judgement {
  return judge(profile, 'receiving', ({ atMost }) => tooWarm(atMost, coreC, errorK));
}

/** Whether food in the cooler is cold enough. */
export function judgeColdHold(profile: Profile, { coreC, errorK }: Taken): Judgement {
  return judge(profile, 'cold-hold', ({ atMost }) => tooWarm(atMost, coreC, errorK));
}

/**
 * Whether food in a cabinet is hot enough; a roast that was cooked by the roast table has its own
 * row.
 */
export function judgeHotHold(
  profile: Profile,
  { coreC, errorK, byRoastTable = false }: Taken & { readonly byRoastTable?: boolean },
): Judgement {
  const rule = byRoastTable ? 'hot-hold-roast' : 'hot-hold';
  return judge(profile, rule, ({ atLeast }) => tooCold(atLeast, coreC, errorK));
}

/**
 * Whether food has been between cold and hot, all its times out of the cooler together, no longer
 * than it may.
 */
export function judgeOutOfTemperature(profile: Profile, outS: Seconds): Judgement {
  return judge(profile, 'out-of-temperature', ({ within }) => tooLong(within, outS));
}

/** Food that is kept by the clock instead of the thermometer. */
export type TimeControl = {
  /** The row of the profile that the kitchen's written procedure names. */
  readonly row: string;
  readonly startC: Celsius;
  readonly warmestC: Celsius;
  readonly elapsedS: Seconds;
  readonly errorK?: number;
};

/**
 * Whether food kept by the clock began cold or hot enough, stayed cool enough, and is not over its
 * time.
 */
export function judgeTimeControl(profile: Profile, food: TimeControl): Judgement {
  return judge(
    profile,
    'time-control',
    ({ startAtMost, startAtLeast, neverAbove, within }) =>
      badStart(food, startAtMost, startAtLeast) ??
      (neverAbove === undefined ? null : tooWarm(neverAbove, food.warmestC, food.errorK)) ??
      tooLong(within, food.elapsedS),
    { only: ({ id }) => id === food.row },
  );
}

function badStart(
  { startC, errorK }: TimeControl,
  atMost: PrintedTemp | undefined,
  atLeast: PrintedTemp | undefined,
): Miss | null {
  const warm = atMost === undefined ? null : tooWarm(atMost, startC, errorK);
  const cold = atLeast === undefined ? null : tooCold(atLeast, startC, errorK);
  const canStart = (atMost !== undefined && !warm) || (atLeast !== undefined && !cold);
  return canStart ? null : (warm ?? cold);
}

/** Whether a table or tool has been in use no longer than it may without a wash. */
export function judgeCleaning(profile: Profile, sinceWashS: Seconds): Judgement {
  return judge(profile, 'clean-interval', ({ within }) => tooLong(within, sinceWashS));
}

/**
 * Whether food that was made on one day may still be used on another. The day it was made is the
 * first.
 * @example judgeDateMark(foodCode, { madeOn: '2026-04-01', usedOn: '2026-04-08' }).ok //=> false
 */
export function judgeDateMark(
  profile: Profile,
  { madeOn, usedOn }: { readonly madeOn: LocalDay; readonly usedOn: LocalDay },
): Judgement {
  const days = daysBetween(madeOn, usedOn) + 1;
  return judge(profile, 'date-mark', ({ within }) => tooLong(within, hours(24 * days)));
}

/**
 * The last day on which food may be used, for its label; null where the profile sets none.
 * @example lastDay(foodCode, '2026-04-01') //=> '2026-04-07'
 */
export function lastDay(profile: Profile, madeOn: LocalDay): LocalDay | null {
  const limit = limitOf(profile, 'date-mark');
  if (limit === null) return null;
  return addDays(madeOn, Math.floor(secondsOf(limit.within) / hours(24)) - 1);
}
