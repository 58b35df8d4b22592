import { seconds } from '../kernel/index.ts';
import type { Link, Part, ResourceId } from './model.ts';
import type { Sharing } from './sharing.ts';
import type { Turn } from './turn.ts';

type Side = {
  readonly activity: Link['from'];
  readonly startS: number;
  readonly endS: number;
  readonly place: ResourceId;
  readonly part: Part;
};

/** The link that keeps two parts apart in time which may not be in two places at once. */
export function clashOrder({ clash, places, users }: Sharing & { kind: 'clash' }, turn: Turn) {
  const [upper, lower] = ([clash.upper, clash.lower] as const).map((side, i): Side => {
    const number = users[i]?.activity ?? 0;
    return {
      activity: side.activity,
      startS: turn.startS[number] ?? 0,
      endS: turn.endS[number] ?? 0,
      place: places[i] ?? places[0],
      part: side.part,
    };
  });
  if (!upper || !lower) return [];
  const [first, second] = inOrder(upper, lower);
  return [linkBetween(first, second, clash.reason)];
}

const beginS = ({ startS, part }: Side) => startS + part.fromS;

const finishS = ({ startS, endS, part: { toS } }: Side) =>
  toS === undefined ? endS : Math.min(endS, startS + toS);

/** The one whose part is over when the other's begins; if neither is, the one that begins first. */
function inOrder(a: Side, b: Side): readonly [Side, Side] {
  if (beginS(b) >= finishS(a)) return [a, b];
  if (beginS(a) >= finishS(b)) return [b, a];
  return beginS(a) <= beginS(b) ? [a, b] : [b, a];
}

/** The later part begins once the earlier is over, or once its activity is, if that is sooner. */
function linkBetween(first: Side, second: Side, reason: string): Link {
  const { toS } = first.part;
  const isWhole = toS === undefined || first.startS + toS >= first.endS;
  return {
    from: first.activity,
    to: second.activity,
    resource: first.place,
    gapS: seconds((isWhole ? 0 : toS) - second.part.fromS),
    ...(isWhole ? {} : { after: 'start' as const }),
    reason,
  };
}
