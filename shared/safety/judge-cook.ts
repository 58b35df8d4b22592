import type { Celsius, Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Judgement, Miss } from './judgement.ts';
import { judge, notAllowed, tooCold, tooLong, tooShort } from './judgement.ts';
import type { Oven } from './oven.ts';
import { creditsRoastTable } from './oven.ts';
import { secondsOf } from './printed.ts';
import type { Profile } from './profile.ts';
import { concerns } from './profile.ts';
import type { Kind, Point, ReheatWay } from './row-schema.ts';

/** How hot the coldest point was, and for how long it was at least so hot. */
type Heat = { readonly coreC: Celsius; readonly heldS?: Seconds; readonly errorK?: number };

/**
 * Whether a piece was cooked to the end its kind asks for. A roast whose oven does not let the
 * table count, or was not named, must reach the row that asks for no time.
 * @example judgeEndTemperature(foodCode, { kind: 'chicken', coreC: celsius(75) }).ok //=> true
 */
export function judgeEndTemperature(
  profile: Profile,
  { kind, oven, ...heat }: Heat & { readonly kind: Kind; readonly oven?: Oven | undefined },
): Judgement {
  const timed = kind !== 'roast' || creditsRoastTable(profile, kind, oven) === true;
  return judge(
    profile,
    'end-temperature',
    ({ anyOf }) =>
      missedAll(timed ? anyOf : anyOf.filter(({ time }) => secondsOf(time) === 0), heat),
    { kind },
  );
}

/**
 * Whether food brought back to heat, to be held hot, got hot enough for long enough and soon
 * enough.
 */
export function judgeReheat(
  profile: Profile,
  { way, tookS, ...heat }: Heat & { readonly way: ReheatWay; readonly tookS: Seconds },
): Judgement {
  return judge(
    profile,
    'reheat',
    ({ anyOf, within }) =>
      missedAll(anyOf, heat) ?? (within === undefined ? null : tooLong(within, tookS)),
    { only: (row) => row.way === way },
  );
}

/** Whether a first heat, to be finished another time, was as short as it must be. */
export function judgeFirstHeat(profile: Profile, heatedS: Seconds): Judgement {
  return judge(profile, 'first-heat', ({ within }) => tooLong(within, heatedS));
}

/** Whether the come-up was quick enough: a warning by the delivered rows, never a verdict. */
export function judgeComeUp(profile: Profile, tookS: Seconds): Judgement {
  return judge(profile, 'come-up', ({ within }) => tooLong(within, tookS));
}

/**
 * Whether a temperature that was taken there speaks for the piece: what a needle went through is
 * not clean inside.
 * @example judgeProbePlace(foodCode, { kind: 'intact', place: 'surface' }).ok //=> true
 */
export function judgeProbePlace(
  profile: Profile,
  { kind, place }: { readonly kind: Kind; readonly place: 'centre' | 'surface' },
): Judgement {
  const concerned = profile.rows.some(
    ({ rule, appliesTo }) => rule === 'probe-at-centre' && concerns(appliesTo, kind),
  );
  if (place === 'centre' || !concerned) return { ok: true, warnings: [] };
  return judge(profile, 'probe-at-centre', () => notAllowed, { kind });
}

/** By how much the nearest of several points is missed; null if one of them is kept. */
function missedAll(
  points: readonly Point[],
  { coreC, heldS = seconds(0), errorK }: Heat,
): Miss | null {
  const hotEnough = points.filter(({ temp }) => tooCold(temp, coreC, errorK) === null);
  const [least] = hotEnough.toSorted((a, b) => secondsOf(a.time) - secondsOf(b.time));
  if (least !== undefined) return tooShort(least.time, heldS);
  const [first] = points;
  return first === undefined ? notAllowed : tooCold(first.temp, coreC, errorK);
}
