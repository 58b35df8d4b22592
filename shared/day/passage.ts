import type { Instant, TaskId } from '../kernel/index.ts';
import { after, instant, must, seconds } from '../kernel/index.ts';
import type { Lag } from '../schedule/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import { type Course, coursesOf, waitsOnOf } from './course.ts';
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
  const passages = before ? readOn(before, tasks, indexOf(plan)) : readAll(plan, tasks);
  read.set(tasks, { plan, passages });
  last.set(plan, { tasks, passages });
  return passages;
}

type Facts = DayState['tasks'];
type Passages = ReadonlyMap<TaskId, Passage>;

const read = new WeakMap<Facts, { readonly plan: AdoptedPlan; readonly passages: Passages }>();

/** What was read last of a plan: a tap is near to it, and little is read anew. */
const last = new WeakMap<AdoptedPlan, Last>();
type Last = { readonly tasks: Facts; readonly passages: Passages };

function readAll(plan: AdoptedPlan, tasks: Facts): Passages {
  const reader = new PassageReader(tasks, indexOf(plan), () => null);
  return new Map(plan.built.tasks.map(({ id }) => [id, reader.read(id)]));
}

/**
 * What was tapped otherwise since then is read anew, and what waits on it. A piece counted or a
 * call for help begins and ends nothing: what was read last still holds.
 */
function readOn({ tasks: before, passages }: Last, tasks: Facts, index: PlanIndex): Passages {
  const isSame = (id: TaskId) =>
    before.get(id)?.started?.at === tasks.get(id)?.started?.at &&
    before.get(id)?.finished?.at === tasks.get(id)?.finished?.at;
  const waitOn = waitsOnOf(index);
  const anew = new Set<TaskId>();
  for (const id of [...before.keys(), ...tasks.keys()]) {
    if (isSame(id) || !passages.has(id)) continue;
    anew.add(id);
    for (const wait of waitOn.get(id) ?? []) anew.add(wait);
  }
  if (anew.size === 0) return passages;
  const reader = new PassageReader(tasks, index, (id) =>
    anew.has(id) ? null : (passages.get(id) ?? null),
  );
  const now = new Map(passages);
  for (const id of anew) now.set(id, reader.read(id));
  return now;
}

class PassageReader {
  readonly #facts: Facts;
  readonly #courses: ReadonlyMap<TaskId, Course>;
  readonly #known = new Map<TaskId, Passage>();
  readonly #before: (id: TaskId) => Passage | null;
  readonly #ends = new Map<TaskId, Instant | null>();

  /** `before` gives what was read earlier and still holds. */
  constructor(facts: Facts, index: PlanIndex, before: (id: TaskId) => Passage | null) {
    this.#facts = facts;
    this.#courses = coursesOf(index);
    this.#before = before;
  }

  read(id: TaskId): Passage {
    const known = this.#known.get(id) ?? this.#before(id);
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
