import { chain } from './chain.ts';
import { DONE, type Facts, WAITING } from './facts.ts';
import type { Link, Placement } from './model.ts';
import { at } from './network.ts';
import type { Published } from './published.ts';

/** Whether the second activity of a link has begun though the first is not done. */
export function isOutOfTurn({ from, to }: Link, { index }: Published, facts: Facts): boolean {
  return facts.stage[index.activity(to)] !== WAITING && facts.stage[index.activity(from)] !== DONE;
}

/**
 * The order that holds now. It is the one decided, except on what was begun out of turn: there it
 * is made anew, first what has begun and then the others as decided. So nothing is sent where
 * somebody is already, and once the tap is taken back, or what was passed over is done, the decided
 * order holds again.
 */
export function linksNow(published: Published, facts: Facts): readonly Link[] {
  const broken = published.links.filter((link) => isOutOfTurn(link, published, facts));
  if (broken.length === 0) return published.links;
  const resources = new Set(broken.flatMap((each) => (each.reason ? [] : [each.resource])));
  const pairs = new Set(broken.flatMap((each) => (each.reason ? [pairOf(each)] : [])));
  const isNew = (link: Link) =>
    link.reason ? pairs.has(pairOf(link)) : resources.has(link.resource);
  const isOver = ({ to }: Link) => facts.stage[published.index.activity(to)] === DONE;
  return [
    ...published.links.filter((link) => !isNew(link)),
    ...chain(published.problem, inTurn(published, facts)).filter(
      (link) => isNew(link) && !isOver(link),
    ),
  ];
}

const pairOf = ({ from, to }: Link) => [from, to].sort().join(' ');

/**
 * All activities with times that say in which order: what has begun comes first, and what runs is
 * not over before anything else begins.
 */
function inTurn({ placements, decidedS }: Published, facts: Facts): Placement[] {
  const isWaiting = (i: number) => facts.stage[i] === WAITING;
  const isDone = (i: number) => facts.stage[i] === DONE;
  let overS = 0;
  let firstS = Number.POSITIVE_INFINITY;
  decidedS.forEach(({ startS }, i) => {
    if (isWaiting(i)) firstS = Math.min(firstS, startS);
    else overS = Math.max(overS, at(isDone(i) ? facts.endS : facts.startS, i) + 1);
  });
  return placements.map((placement, i) => {
    const decided = decidedS[i] ?? placement;
    const byS = overS - firstS;
    const later = { startS: decided.startS + byS, endS: decided.endS + byS };
    const begun = { startS: at(facts.startS, i), endS: isDone(i) ? at(facts.endS, i) : overS };
    return { ...placement, ...(isWaiting(i) ? later : begun) } as Placement;
  });
}

/** Whether two orders are the same, link by link. */
export function isSameOrder(a: readonly Link[], b: readonly Link[]): boolean {
  return (
    a === b ||
    (a.length === b.length &&
      a.every((link, i) => {
        const other = b[i];
        return (
          link.from === other?.from && link.to === other.to && link.resource === other.resource
        );
      }))
  );
}
