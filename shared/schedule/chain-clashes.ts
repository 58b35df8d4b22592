import { seconds } from '../kernel/index.ts';
import type { Placed } from './chain-placed.ts';
import type { Clash, Link, Part, Problem, ResourceId } from './model.ts';

/** The links that keep apart in time what may not be in two places at once. */
export function clashLinks(problem: Problem, placed: readonly Placed[]): Link[] {
  const byId = new Map(placed.map((user) => [user.placement.activity, user]));
  return problem.clashes.flatMap((clash) => {
    const upper = byId.get(clash.upper.activity);
    const lower = byId.get(clash.lower.activity);
    if (!upper || !lower) return [];
    const places = meetingPlaces(clash, upper, lower);
    if (!places) return [];
    const parts = [
      { user: upper, place: places[0], part: clash.upper.part },
      { user: lower, place: places[1], part: clash.lower.part },
    ] as const;
    const [first, then] = inOrder(parts[0], parts[1]);
    return [linkBetween(first, then, clash.reason)];
  });
}

type Side = { readonly user: Placed; readonly place: ResourceId; readonly part: Part };

const beginS = ({ user, part }: Side) => user.placement.startS + part.fromS;

/** The one whose part is over when the other's begins; if neither is, the one that begins first. */
function inOrder(a: Side, b: Side): readonly [Side, Side] {
  if (beginS(b) >= finishS(a)) return [a, b];
  if (beginS(a) >= finishS(b)) return [b, a];
  return beginS(a) <= beginS(b) ? [a, b] : [b, a];
}

function finishS({ user, part }: Side): number {
  const { startS, endS } = user.placement;
  return part.toS === undefined ? endS : Math.min(endS, startS + part.toS);
}

function meetingPlaces({ places }: Clash, upper: Placed, lower: Placed) {
  const isIn = ({ placement }: Placed, place: ResourceId) =>
    placement.uses.some(({ resource }) => resource === place);
  return places.find(([up, low]) => isIn(upper, up) && isIn(lower, low));
}

/** The later part begins once the earlier is over, or once its activity is, if that is sooner. */
function linkBetween(first: Side, then: Side, reason: string): Link {
  const { startS, endS, activity } = first.user.placement;
  const { toS } = first.part;
  const whole = toS === undefined || startS + toS >= endS;
  return {
    from: activity,
    to: then.user.placement.activity,
    resource: first.place,
    gapS: seconds((whole ? 0 : toS) - then.part.fromS),
    ...(whole ? {} : { after: 'start' as const }),
    reason,
  };
}
