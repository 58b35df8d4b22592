import type { Instant, PersonId, Seconds, ServiceId, Span, TaskId } from '../kernel/index.ts';
import { after, instant, must, since } from '../kernel/index.ts';
import { resourceId } from '../plan/index.ts';
import type { Link, Reason, Timeline } from '../schedule/index.ts';
import { movesTo, placementOf, sameArrangement } from './arrangement.ts';
import { endRangeOn } from './end-range.ts';
import type { Event } from './event.ts';
import { fold } from './fold.ts';
import { standing } from './happened.ts';
import { holdsOf } from './held.ts';
import { inKeptOrder } from './kept-order.ts';
import { type LeastLag, leastLagsInto } from './least-lags.ts';
import { isNews, type News, newsOf, seenOn } from './news.ts';
import { type Outlook, Outlooks } from './outlook.ts';
import { passagesOf } from './passage.ts';
import { groupBy, indexOf, type PlanIndex } from './plan-index.ts';
import { type DayState, factsOf } from './state.ts';
import {
  burning,
  tellFires,
  tellForeseen,
  tellHolds,
  tellLength,
  tellPassages,
  timelineOf,
  weighed,
} from './told.ts';
import { hasTurned } from './turned.ts';

/** The times of a task: facts once they are, projected until then. */
export type TaskTimes = { readonly startS: Seconds; readonly endS: Seconds };

/**
 * The day together with the times that follow from it: a state, and a timeline kept true to it
 * event by event. It can be thrown away at any moment and opened anew from the state, with the same
 * times.
 */
export class Live {
  #state: DayState;
  #now: Instant;
  #timeline: Timeline | null;
  readonly #outlooks = new Outlooks();
  #news: News | null = null;
  /** Most taps leave the order as it is, and every line of every wall asks for it. */
  #linksRead: readonly Link[] = [];
  #linksInto: ReadonlyMap<TaskId, readonly Link[]> = new Map();
  readonly #leastLags = new Map<TaskId, readonly LeastLag[]>();

  constructor(state: DayState, now: Instant, timeline: Timeline | null) {
    this.#state = state;
    this.#now = now;
    this.#timeline = timeline;
  }

  get state(): DayState {
    return this.#state;
  }

  get now(): Instant {
    return this.#now;
  }

  get nowS(): Seconds {
    return since(this.index.plan.built.origin, this.#now);
  }

  /** The running plan; a Bug before there is one. */
  get index(): PlanIndex {
    return indexOf(must(this.#state.plan, 'a plan'));
  }

  /** The last decision since the plan, with what it moved; null before there is one. */
  get news(): News | null {
    return this.#news;
  }

  get timeline(): Timeline {
    return must(this.#timeline, 'a plan');
  }

  /**
   * Folds one more event in and moves what hangs on it, as things stood when it was kept. Whoever
   * has folded it already hands the day over, so that what is read off it is read once.
   */
  apply(event: Event, folded: DayState = fold(this.#state, event)): void {
    const isBehind = this.#now > event.keptAt;
    this.#moveOn(event.keptAt);
    const seen = this.#timeline && isNews(event) ? this.#seen() : null;
    this.#take(event, folded);
    if (event.kind === 'planAdopted') this.#news = null;
    // What it moved is told as of when it was kept, though the clock went on while it was written.
    else if (seen && isBehind) this.#news = openLive(folded, event.keptAt).news;
    else if (seen) this.#news = newsOf(event, seen, this.#seen());
  }

  /** As `apply`, where later events are the news: what this one moved is not worked out. */
  pass(event: Event): void {
    this.#moveOn(event.keptAt);
    this.#take(event, fold(this.#state, event));
  }

  #take(event: Event, folded: DayState): void {
    const before = this.#state;
    this.#state = folded;
    this.#outlooks.forget();
    if (event.kind === 'planAdopted') {
      this.#timeline = timelineOf(this.#state, this.#now);
      this.#linksRead = [];
    } else if (event.kind === 'undone') this.#timeline = asUndone(this.#state, this.#now);
    else this.#follow(before, event);
  }

  /** Takes over what was kept besides and moves nothing of the day: who belongs to the hub. */
  besides(state: DayState): void {
    this.#state = state;
  }

  /** Moves the clock on; whether something may have changed that a screen shows. */
  tick(now: Instant): boolean {
    const was = this.#now;
    return this.#moveOn(now) || (this.#timeline !== null && hasTurned(this.#state, was, this.#now));
  }

  /** Whether a time has changed. */
  #moveOn(now: Instant): boolean {
    if (now > this.#now) this.#now = now;
    if (!this.#timeline) return false;
    const isHeld = this.#tellHolds();
    const { changed } = this.#timeline.notBefore(this.nowS);
    if (isHeld || changed.length > 0) this.#outlooks.forget();
    return isHeld || changed.length > 0;
  }

  instantOf(timeS: Seconds): Instant {
    return after(this.index.plan.built.origin, timeS);
  }

  timesOf(task: TaskId): TaskTimes {
    return this.timeline.times(task);
  }

  /** The doubt of its end, from the spread of its length; none for what is done. */
  endRangeOf(task: TaskId): { readonly lowS: Seconds; readonly highS: Seconds } {
    return endRangeOn(this.timeline, this, task);
  }

  reasonFor(task: TaskId): Reason {
    return this.timeline.reason(task, 'start');
  }

  /** Null once all that it waited for stands ready. */
  outlookOf(service: ServiceId): Outlook | null {
    return this.#outlooks.at(this).get(service) ?? null;
  }

  /** When a person works, in seconds of the plan; breaks left out. */
  shiftsOf(person: PersonId): readonly Span[] {
    const id = resourceId({ kind: 'hand', person });
    const hand = this.index.plan.built.problem.resources.find((resource) => resource.id === id);
    return hand?.kind === 'capacity' ? (hand.open ?? []) : [];
  }

  /** The lags into a task, those that sharing a hand or a place makes among them. */
  leastLagsInto(task: TaskId): readonly LeastLag[] {
    const { links } = this.timeline;
    if (links !== this.#linksRead) {
      this.#linksRead = links;
      this.#linksInto = groupBy(links, ({ to }) => to);
      this.#leastLags.clear();
    }
    const known = this.#leastLags.get(task);
    if (known) return known;
    const all = leastLagsInto(this.index, this.#linksInto.get(task) ?? [], task);
    this.#leastLags.set(task, all);
    return all;
  }

  #seen = () => seenOn(this.timeline, this.index, this.#outlooks.at(this));

  #follow(before: DayState, event: Event): void {
    if (!this.#timeline) return;
    if (event.kind === 'slotsMoved') {
      this.#move([...new Set(event.moves.map(({ stay }) => stay))]);
    } else if ('task' in event && event.task !== null) {
      const was = factsOf(before, event.task);
      const is = factsOf(this.#state, event.task);
      if (was.hand !== is.hand) this.#moveIfOther(before, event.task);
      if (was.counted !== is.counted || was.lateByS !== is.lateByS) {
        tellLength(this.#timeline, this.#state, event.task, this.#now);
      }
    }
    if (event.kind === 'dayMended') this.#timeline.decided(event.changes, event.links);
    if (event.kind === 'deliveryCame') {
      for (const task of weighed(this.#state)) {
        tellLength(this.#timeline, this.#state, task, this.#now);
      }
    }
    if (event.kind === 'forecastAdopted') {
      tellForeseen(this.#timeline, this.#state, event.forecast.stay, this.#now);
    }
    tellPassages(this.#timeline, passagesOf(before), passagesOf(this.#state), this.index);
    tellFires(this.#timeline, before, this.#state, { event, now: this.#now });
    tellHolds(this.#timeline, this.#state, this.#now);
    this.#timeline.notBefore(this.nowS);
  }

  /** What is held with no time to it is held by the clock; whether that moves a time. */
  #tellHolds(): boolean {
    const isDown = this.#state.happened.spells.some(
      ({ kind, until }) => kind === 'down' && until === null,
    );
    if (!isDown && holdsOf(this.#state).size === 0) return false;
    const stages = isDown ? burning(this.#state) : [];
    const updates = stages.map((stage) => tellLength(this.timeline, this.#state, stage, this.#now));
    updates.push(tellHolds(this.timeline, this.#state, this.#now));
    return updates.some(({ changed }) => changed.length > 0);
  }

  #moveIfOther(before: DayState, task: TaskId): void {
    const was = placementOf(before, this.index, task);
    if (!sameArrangement(was, placementOf(this.#state, this.index, task))) this.#move([task]);
  }

  #move(tasks: readonly TaskId[]): void {
    this.#timeline?.moved(movesTo(this.#state, this.index, tasks));
  }
}

/** The times of a day as if what was undone had never been. */
function asUndone({ atPlan, sincePlan, keptAt }: DayState, now: Instant): Timeline {
  const plan = must(atPlan, 'a plan');
  const live = new Live(plan, plan.keptAt, timelineOf(plan, plan.keptAt));
  for (const event of standing(sincePlan)) live.pass(event);
  live.tick(instant(Math.max(keptAt, now)));
  return live.timeline;
}

/** A live day as of `now`, from nothing but its state. */
export function openLive(state: DayState, now: Instant): Live {
  const { atPlan, sincePlan } = state;
  if (!atPlan) return new Live(state, now, null);
  // With where it began: an undoing goes back to there.
  const live = new Live({ ...atPlan, atPlan }, atPlan.keptAt, timelineOf(atPlan, atPlan.keptAt));
  const events = inKeptOrder(sincePlan, atPlan.keptAt);
  const newsAt = events.findLastIndex(isNews);
  events.forEach((event, i) => void (i < newsAt ? live.pass(event) : live.apply(event)));
  live.besides(state);
  live.tick(now);
  return live;
}
