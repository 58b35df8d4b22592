import type { ActivityId, Seconds } from '../kernel/index.ts';
import { assert, must, seconds } from '../kernel/index.ts';
import { isOutOfHours } from './asking.ts';
import { brokenIn } from './broken.ts';
import { criticalChain } from './critical-chain.ts';
import { DONE, WAITING } from './facts.ts';
import { Heap } from './heap.ts';
import { lastFit } from './hours.ts';
import { initialFacts } from './initial-facts.ts';
import { copyOf, type Live, liveFrom } from './live.ts';
import { UNBOUND } from './live-net.ts';
import type { End, GoalId, Link, Placement, Problem, Schedule } from './model.ts';
import { at } from './network.ts';
import { goalOutlook, inHandOf } from './outlook.ts';
import { goalOf, goalsOf, publishedOf } from './published.ts';
import { reasonOf } from './reasons.ts';
import { redecided, relinked } from './relink.ts';
import type {
  Broken,
  GoalOutlook,
  InHand,
  Move,
  Reason,
  Step,
  Timeline,
  Times,
  Update,
} from './timeline-types.ts';
import { timesOf } from './times-of.ts';

/**
 * Brings a published schedule to life. It must keep the problem (see `check`), for its times are
 * taken as they are: with no news, nothing moves.
 */
export function createTimeline(problem: Problem, schedule: Schedule): Timeline {
  return liveTimeline(problem, schedule);
}

/** The same, for those who look inside. */
export function liveTimeline(problem: Problem, { placements, links }: Schedule): LiveTimeline {
  const published = publishedOf(problem, placements, links);
  assert(published.placements.length === problem.activities.length, 'every activity is placed');
  return new LiveTimeline(liveFrom(published, initialFacts(problem, published.placements)));
}

/** The one timeline there is; `live` lets tests and measurements look inside. */
export class LiveTimeline implements Timeline {
  #live: Live;
  /** Activities by when the clock will move them: those waiting by start, those running by end. */
  #due: Heap;

  constructor(live: Live) {
    this.#live = live;
    this.#due = new Heap(live.facts.stage.length);
    for (let activity = 0; activity < live.facts.stage.length; activity++) this.#setDue(activity);
  }

  get live(): Live {
    return this.#live;
  }

  get schedule(): Schedule {
    const { published } = this.#live;
    const placements = published.placements.map(
      (placement, i): Placement => ({ ...placement, ...this.#projected(i) }),
    );
    return { placements, links: this.links };
  }

  get links(): readonly Link[] {
    return this.#live.turns.links;
  }

  get nowS(): Seconds | null {
    const { nowS } = this.#live.facts;
    return nowS === UNBOUND ? null : seconds(nowS);
  }

  times(id: ActivityId): Times {
    return timesOf(this.#live, this.#number(id));
  }

  reason(id: ActivityId, end: End): Reason {
    return reasonOf(this.#live, this.#number(id) * 2 + (end === 'start' ? 0 : 1));
  }

  goal(id: GoalId): GoalOutlook {
    return goalOutlook(this.#live, goalOf(this.#live.published, id));
  }

  inHand(ids: readonly GoalId[]): InHand {
    return inHandOf(this.#live, goalsOf(this.#live.published, ids));
  }

  criticalChain(id: GoalId): Step[] {
    return criticalChain(this.#live, goalOf(this.#live.published, id));
  }

  broken(): Broken[] {
    return brokenIn(this.#live);
  }

  started(id: ActivityId, atS: Seconds): Update {
    const activity = this.#number(id);
    this.#live.facts.started(activity, atS);
    return this.#restaged(activity);
  }

  finished(id: ActivityId, atS: Seconds): Update {
    const activity = this.#number(id);
    this.#live.facts.finished(activity, atS, () => this.#projected(activity).startS);
    return this.#restaged(activity);
  }

  takenBack(id: ActivityId): Update {
    const activity = this.#number(id);
    this.#live.facts.takenBack(activity);
    return this.#restaged(activity);
  }

  lengthIs(id: ActivityId, totalS: Seconds): Update {
    const activity = this.#number(id);
    const { facts, parts } = this.#live;
    facts.lengthIs(activity, totalS, parts.net.isWork[activity] === 1);
    this.#mark(activity);
    return this.#settle();
  }

  held(until: ReadonlyMap<ActivityId, Seconds>): Update {
    const wanted = new Map([...until].map(([id, atS]) => [this.#number(id), atS]));
    for (const activity of this.#live.facts.hold(wanted)) this.#live.earliest.mark(activity);
    return this.#settle();
  }

  notBefore(nowS: Seconds): Update {
    const { facts, earliest } = this.#live;
    facts.passedTo(nowS);
    const due: number[] = [];
    while (this.#due.size > 0 && this.#due.least < nowS) due.push(this.#due.pop());
    for (const activity of due) earliest.mark(activity);
    const update = this.#settle();
    for (const activity of due) this.#setDue(activity);
    return update;
  }

  moved(changes: readonly Move[]): Update {
    return this.#replace(relinked(this.#live, changes));
  }

  decided(placements: readonly Placement[], links: readonly Link[]): Update {
    return this.#replace(redecided(this.#live, { placements, links }));
  }

  fork(): LiveTimeline {
    return new LiveTimeline(copyOf(this.#live));
  }

  /** Makes known that a stage is another, and all that changes with it. */
  #restaged(activity: number): Update {
    const { turns, earliest, latest } = this.#live;
    turns.follow(activity, (arc) => {
      earliest.markArc(arc);
      latest.markArc(arc);
    });
    this.#setDue(activity);
    this.#mark(activity, true);
    return this.#settle();
  }

  /** Goes on with another order, and says what it changes. */
  #replace(live: Live): Update {
    const before = this.#live;
    this.#live = live;
    const all = [...live.published.placements.keys()];
    for (const activity of all) this.#setDue(activity);
    const differing = (a: Int32Array, b: Int32Array) =>
      all.filter((i) => a[i * 2] !== b[i * 2] || a[i * 2 + 1] !== b[i * 2 + 1]);
    const earlier = differing(before.earliest.rule.timeS, live.earliest.rule.timeS);
    const later = differing(before.latest.rule.timeS, live.latest.rule.timeS);
    return this.#update(earlier, later, this.#asked);
  }

  #mark(activity: number, restaged = false): void {
    const { floors, earliest, latest } = this.#live;
    floors.follow(activity, (node) => earliest.markFloor(node));
    earliest.markNews(activity, restaged);
    latest.markNews(activity, restaged);
  }

  #settle(): Update {
    const { earliest, latest } = this.#live;
    const askedBefore = this.#asked;
    const earlier = earliest.settle();
    const later = latest.settle();
    for (const activity of earlier) this.#setDue(activity);
    return this.#update(earlier, later, this.#asked - askedBefore);
  }

  get #asked(): number {
    const { earliest, latest } = this.#live;
    return earliest.rule.asked + latest.rule.asked;
  }

  #update(earlier: readonly number[], later: readonly number[], touched: number): Update {
    const { placements } = this.#live.published;
    const changed = [...new Set([...earlier, ...later])].map(
      (activity) => must(placements[activity], 'a placed activity').activity,
    );
    return { changed, touched, moved: earlier.length + later.length };
  }

  #setDue(activity: number): void {
    const stage = at(this.#live.facts.stage, activity);
    const { startS, endS } = this.#projected(activity);
    if (stage === DONE) this.#due.delete(activity);
    else this.#due.set(activity, stage === WAITING ? this.#dueS(activity, startS) : endS);
  }

  /** Where a maximum has put work outside its hours: due once it fits no more before these. */
  #dueS(activity: number, startS: Seconds): number {
    const { rule } = this.#live.earliest;
    if (!isOutOfHours(rule, activity * 2)) return startS;
    const hours = must(rule.net.hours[activity], 'hours');
    const lastS = lastFit(hours, startS, at(this.#live.facts.minS, activity));
    return lastS < startS && rule.inHours(activity, lastS + 1) > startS ? lastS : startS;
  }

  #projected(activity: number) {
    const { timeS } = this.#live.earliest.rule;
    return { startS: seconds(at(timeS, activity * 2)), endS: seconds(at(timeS, activity * 2 + 1)) };
  }

  #number(id: ActivityId): number {
    return this.#live.published.index.activity(id);
  }
}
