import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { after, instant, must, seconds } from '../kernel/index.ts';
import type { Lag } from '../schedule/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';

/** When a task began and ended, so far. */
export type Passage = { readonly startedAt: Instant | null; readonly finishedAt: Instant | null };

/**
 * Nobody taps the smoke, the set or the rest: they begin when the hands before them are done and
 * end when the hands after them begin. This reads their passage off the taps, and gives the taps
 * themselves for the work of hands.
 */
export function passagesOf({ plan, tasks }: DayState): ReadonlyMap<TaskId, Passage> {
  if (!plan) return new Map();
  const known = read.get(tasks);
  if (known?.plan === plan) return known.passages;
  const before = last.get(plan);
  if (before && isSameTaps(before.tasks, tasks)) {
    read.set(tasks, { plan, passages: before.passages });
    return before.passages;
  }
  const passages = new Map<TaskId, Passage>();
  read.set(tasks, { plan, passages });
  last.set(plan, { tasks, passages });
  const reader = new PassageReader(tasks, indexOf(plan), passages);
  for (const task of plan.built.tasks) reader.read(task.id);
  return passages;
}

type Facts = DayState['tasks'];
type Read = { readonly plan: AdoptedPlan; readonly passages: ReadonlyMap<TaskId, Passage> };

/** By what was tapped: what else happens, a reading or a note, leaves it as it was. */
const read = new WeakMap<Facts, Read>();

/** A piece counted or a call for help begins and ends nothing: what was read last still holds. */
const last = new WeakMap<AdoptedPlan, Omit<Read, 'plan'> & { readonly tasks: Facts }>();

function isSameTaps(a: Facts, b: Facts): boolean {
  const isSame = (id: TaskId) =>
    a.get(id)?.started?.at === b.get(id)?.started?.at &&
    a.get(id)?.finished?.at === b.get(id)?.finished?.at;
  return [...a.keys()].every(isSame) && [...b.keys()].every(isSame);
}

class PassageReader {
  readonly #facts: Facts;
  readonly #courses: ReadonlyMap<TaskId, Course>;
  readonly #known: Map<TaskId, Passage>;
  readonly #ends = new Map<TaskId, Instant | null>();

  constructor(facts: Facts, index: PlanIndex, known: Map<TaskId, Passage>) {
    this.#facts = facts;
    this.#courses = coursesOf(index);
    this.#known = known;
  }

  read(id: TaskId): Passage {
    const known = this.#known.get(id);
    if (known) return known;
    const course = must(this.#courses.get(id), id);
    const passage = course.isByHand ? this.#tapped(id) : this.#followed(id, course);
    this.#known.set(id, passage);
    return passage;
  }

  #tapped(id: TaskId): Passage {
    const facts = this.#facts.get(id);
    if (!facts) return NOT_YET;
    return { startedAt: facts.started?.at ?? null, finishedAt: facts.finished?.at ?? null };
  }

  #followed(id: TaskId, course: Course): Passage {
    const startedAt = this.#startFrom(course);
    const latest = this.#endFrom(id);
    if (latest === null) return startedAt === null ? NOT_YET : { startedAt, finishedAt: null };
    if (startedAt === null) return { startedAt: latest, finishedAt: latest };
    // Where only another waiting follows, as a hold follows a rest, no hand marks the change: its
    // planned length does.
    const planned = course.handsFollow ? latest : after(startedAt, course.plannedS);
    return { startedAt, finishedAt: instant(Math.max(startedAt, Math.min(latest, planned))) };
  }

  /** It has begun once all that it waits for has happened. */
  #startFrom({ waitsFor }: Course): Instant | null {
    let latest: Instant | null = null;
    for (const { from, minS = seconds(0) } of waitsFor) {
      const happened = this.#when(from);
      if (happened === null) return null;
      const at = after(happened, minS);
      if (latest === null || at > latest) latest = at;
    }
    return latest;
  }

  /** It has ended once anything that waits for its end has begun. */
  #endFrom(id: TaskId): Instant | null {
    const known = this.#ends.get(id);
    if (known !== undefined) return known;
    this.#ends.set(id, null);
    const { ties, sequels } = must(this.#courses.get(id), id);
    let end: Instant | null = null;
    for (const { from, minS = seconds(0) } of ties) {
      const happened = this.#when(from);
      if (happened !== null) end = earlier(end, after(happened, minS));
    }
    for (const { to, minS = seconds(0) } of sequels) {
      const begun = this.#begun(to.activity);
      if (begun !== null) end = earlier(end, after(begun, seconds(-minS)));
    }
    this.#ends.set(id, end);
    return end;
  }

  #begun(id: TaskId): Instant | null {
    if (!must(this.#courses.get(id), id).isByHand) return this.#endFrom(id);
    return this.#facts.get(id)?.started?.at ?? null;
  }

  #when({ activity, end }: Lag['from']): Instant | null {
    const { startedAt, finishedAt } = this.read(activity);
    return end === 'start' ? startedAt : finishedAt;
  }
}

const NOT_YET: Passage = { startedAt: null, finishedAt: null };

const earlier = (a: Instant | null, b: Instant): Instant => (a === null || b < a ? b : a);

/** What the passage of a task hangs on, as its plan has it. */
type Course = {
  readonly isByHand: boolean;
  /** What must have happened before it begins. */
  readonly waitsFor: readonly Lag[];
  /** Moments of work by hand that its end is tied to, as a stay is to the taking off. */
  readonly ties: readonly Lag[];
  /** What waits for its end. */
  readonly sequels: readonly Lag[];
  /** Whether a hand marks its end; so it is where nothing follows, too. */
  readonly handsFollow: boolean;
  readonly plannedS: Seconds;
};

const courses = new WeakMap<PlanIndex, ReadonlyMap<TaskId, Course>>();

/** Read at every tap for every task, and so made once for each plan. */
function coursesOf(index: PlanIndex): ReadonlyMap<TaskId, Course> {
  const known = courses.get(index);
  if (known) return known;
  const made = new Map([...index.tasks.keys()].map((id) => [id, courseOf(index, id)]));
  courses.set(index, made);
  return made;
}

function courseOf(index: PlanIndex, id: TaskId): Course {
  const isByHand = (task: TaskId) => must(index.tasks.get(task), task).work === 'hands';
  const into = (index.lagsInto.get(id) ?? []).filter(isPrecedence);
  const sequels = (index.lagsOutOf.get(id) ?? []).filter(isSequence);
  const { startS, endS } = must(index.placements.get(id), id);
  return {
    isByHand: isByHand(id),
    waitsFor: into.filter(({ to }) => to.end === 'start'),
    ties: into.filter(({ to, from }) => to.end === 'end' && isByHand(from.activity)),
    sequels,
    handsFollow: sequels.length === 0 || sequels.some(({ to }) => isByHand(to.activity)),
    plannedS: seconds(endS - startS),
  };
}

const isPrecedence = (lag: Lag) => lag.minS !== undefined && lag.minS >= 0;
const isSequence = (lag: Lag) =>
  lag.from.end === 'end' && lag.to.end === 'start' && isPrecedence(lag);
