import { must, seconds } from '../kernel/index.ts';
import { chain } from './chain.ts';
import { DONE, WAITING } from './facts.ts';
import { lengthsIn } from './initial-facts.ts';
import { type Live, liveFrom } from './live.ts';
import type { Link, Mode, Placement } from './model.ts';
import { at } from './network.ts';
import { type Published, withOrders } from './published.ts';
import type { Move } from './timeline-types.ts';

/**
 * The day after somebody moved work to other hands, places or modes. What the changed ones use, or
 * used, is handed on in a new order, that of the projected starts; all other links stay. Published
 * times stay too, as long as nothing moves them. Without changes it is the same day, worked out
 * from scratch.
 */
export function relinked(live: Live, changes: readonly Move[]): Live {
  const { published, facts } = live;
  const changeOf = new Map(changes.map((change) => [change.activity, change]));
  const placements = published.placements.map((placement): Placement => {
    const { mode, uses } = changeOf.get(placement.activity) ?? placement;
    return { ...placement, mode, uses };
  });
  const length = facts.copy();
  placements.forEach((placement, i) => {
    const before = published.placements[i];
    if (facts.stage[i] !== WAITING || before?.mode === placement.mode) return;
    const mode = modeIn(live, i, placement.mode);
    if (mode.length.kind === 'wait') return;
    const endS = placement.startS + mode.length.typicalS;
    const { minS, maxS } = lengthsIn(published.problem.lags, mode, {
      ...placement,
      endS,
    } as Placement);
    length.minS[i] = minS;
    length.maxS[i] = maxS;
  });
  if (changes.length === 0) return liveFrom(published, length);
  const { timeS } = live.earliest.rule;
  const decidedS = placements.map((_, i) => ({
    startS: seconds(at(timeS, i * 2)),
    endS: seconds(at(timeS, i * 2 + 1)),
  }));
  const links = linksAfter(live, changes, placements, decidedS);
  const decided = { ...published, placements, links, decidedS };
  return liveFrom(withOrders(decided), length);
}

function linksAfter(
  live: Live,
  changes: readonly Move[],
  placements: readonly Placement[],
  decidedS: Published['decidedS'],
): Link[] {
  const { published, facts } = live;
  const changed = new Set(changes.map(({ activity }) => activity));
  const resourcesOf = ({ mode, uses }: Placement, i: number) => [
    ...uses.map(({ resource }) => resource),
    ...modeIn(live, i, mode).states.map(({ resource }) => resource),
  ];
  const touched = new Set(
    [published.placements, placements].flatMap((each) =>
      each.flatMap((placement, i) =>
        changed.has(placement.activity) ? resourcesOf(placement, i) : [],
      ),
    ),
  );
  const isTouched = ({ from, to, resource, reason }: Link) =>
    reason === undefined ? touched.has(resource) : changed.has(from) || changed.has(to);
  const projected = placements.map((placement, i) => ({ ...placement, ...decidedS[i] }));
  const isOver = ({ to }: Link) => facts.stage[published.index.activity(to)] === DONE;
  return [
    ...published.links.filter((link) => !isTouched(link)),
    ...chain(published.problem, projected).filter((link) => isTouched(link) && !isOver(link)),
  ];
}

function modeIn({ published }: Live, activity: number, mode: string): Mode {
  const its = must(published.problem.activities[activity], 'an activity');
  return must(
    its.modes.find(({ id }) => id === mode),
    mode,
  );
}
