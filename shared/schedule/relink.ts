import { must, seconds } from '../kernel/index.ts';
import { chain } from './chain.ts';
import { DONE, type Facts, WAITING } from './facts.ts';
import { lengthsIn } from './initial-facts.ts';
import { type Live, liveFrom } from './live.ts';
import type { Link, Mode, Placement, Schedule } from './model.ts';
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
  const { published } = live;
  const changeOf = new Map(changes.map((change) => [change.activity, change]));
  const placements = published.placements.map((placement): Placement => {
    const { mode, uses } = changeOf.get(placement.activity) ?? placement;
    return { ...placement, mode, uses };
  });
  const length = withLengths(live, placements);
  if (changes.length === 0) return liveFrom(published, length);
  const decidedS = projectedS(live);
  const links = linksAfter(live, changes, placements, decidedS);
  const decided = { ...published, placements, links, decidedS };
  return liveFrom(withOrders(decided), length);
}

/** What is known of lengths, where work that waits is now done in another way. */
function withLengths(live: Live, placements: readonly Placement[]): Facts {
  const { published, facts } = live;
  const length = facts.copy();
  placements.forEach((placement, i) => {
    const before = published.placements[i];
    if (facts.stage[i] !== WAITING || before?.mode === placement.mode) return;
    const mode = modeIn(published, i, placement.mode);
    if (mode.length.kind === 'wait') return;
    const endS = placement.startS + mode.length.typicalS;
    const own = { ...placement, endS: seconds(endS) };
    const { minS, maxS } = lengthsIn(published.problem.lags, mode, own);
    length.minS[i] = minS;
    length.maxS[i] = maxS;
  });
  return length;
}

/**
 * The day after all that waits was decided anew, by a schedule in which it is no later than that
 * says; what that does not name stays as it is shown. What is shown keeps its times as far as it
 * can: nothing is later than in the schedule.
 */
export function redecided(live: Live, decided: Schedule): Live {
  const { published, facts } = live;
  const its = new Map(decided.placements.map((placement) => [placement.activity, placement]));
  const shownS = projectedS(live);
  const anew = published.placements.map((placement, i): Placement => {
    const stands = { ...placement, ...must(shownS[i], 'shown') };
    return facts.stage[i] === WAITING ? (its.get(placement.activity) ?? stands) : stands;
  });
  const placements = published.placements.map((placement, i): Placement => {
    if (facts.stage[i] !== WAITING) return placement;
    const [shown, next] = [must(shownS[i], 'shown'), must(anew[i], 'decided')];
    const startS = seconds(Math.min(shown.startS, next.startS));
    return { ...next, startS, endS: seconds(Math.min(shown.endS, next.endS)) };
  });
  const isOver = ({ to }: Link) => facts.stage[published.index.activity(to)] === DONE;
  const links = decided.links.filter((link) => !isOver(link));
  return liveFrom(
    withOrders({ ...published, placements, links, decidedS: anew }),
    withLengths(live, placements),
  );
}

/** The day on which `later` does what it does before `sooner`, on all that the two share. */
export function turnedRound(live: Live, sooner: number, later: number): Live {
  const { published } = live;
  const decidedS = projectedS(live);
  const [first, second] = [must(decidedS[sooner], 'first'), must(decidedS[later], 'second')];
  const endS = seconds(first.startS + second.endS - second.startS);
  decidedS[later] = { startS: first.startS, endS };
  decidedS[sooner] = { startS: endS, endS: seconds(endS + first.endS - first.startS) };
  const both = [sooner, later].map((i) => must(published.placements[i], 'placed'));
  const links = linksAfter(live, both, published.placements, decidedS);
  return liveFrom(withOrders({ ...published, links, decidedS }), live.facts.copy());
}

/** When all will be, as things stand. */
function projectedS({ published, earliest }: Live): Span[] {
  const { timeS } = earliest.rule;
  return published.placements.map((_, i) => ({
    startS: seconds(at(timeS, i * 2)),
    endS: seconds(at(timeS, i * 2 + 1)),
  }));
}

type Span = Pick<Placement, 'startS' | 'endS'>;

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
    ...modeIn(published, i, mode).states.map(({ resource }) => resource),
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

function modeIn({ problem }: Published, activity: number, mode: string): Mode {
  const its = must(problem.activities[activity], 'an activity');
  return must(
    its.modes.find(({ id }) => id === mode),
    mode,
  );
}
