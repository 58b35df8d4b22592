import type { Oven } from './oven.ts';
import { secondsOf } from './printed.ts';
import type { Profile } from './profile.ts';
import { limitOf } from './profile.ts';
import type { Series } from './readings.ts';
import { coldestOf, warmestOf } from './readings.ts';
import type { Kind, Process } from './row-schema.ts';

/** What may be said of a cook beside its readings. */
export type Circumstances = {
  /** Kelvins that the thermometer may be off; it counts against every limit. */
  readonly errorK?: number;
  readonly oven?: Oven;
  /** Where the probe sat; the centre unless it is said. */
  readonly place?: 'centre' | 'surface';
  /** Of poultry, per cent; unknown fat takes the fattest column. */
  readonly fatPercent?: number;
  readonly done?: readonly Process[];
};

/** Readings of one piece and everything they are held against. */
export type Watch = {
  /** At its coldest point. */
  readonly readings: Series;
  readonly warmest: Series;
  readonly kind: Kind;
  readonly profile: Profile;
  readonly errorK: number;
  readonly apartAtMostS: number;
  readonly oven: Oven | undefined;
};

/**
 * Puts readings beside what they are held against. Where no interval is set, every silence is too
 * long.
 */
export function watchOf(
  probes: readonly Series[],
  kind: Kind,
  profile: Profile,
  { errorK = 0, oven }: Circumstances,
): Watch {
  const interval = limitOf(profile, 'sample-interval')?.within;
  const apartAtMostS = interval === undefined ? 0 : secondsOf(interval);
  const [readings, warmest] = [coldestOf(probes), warmestOf(probes)];
  return { readings, warmest, kind, profile, errorK, apartAtMostS, oven };
}
