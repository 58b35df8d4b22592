import type { Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { Lag } from '../schedule/index.ts';
import type { PlanIndex } from './plan-index.ts';

/** What the passage of a task hangs on, as its plan has it. */
export type Course = {
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
export function coursesOf(index: PlanIndex): ReadonlyMap<TaskId, Course> {
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

const waitsOn = new WeakMap<PlanIndex, ReadonlyMap<TaskId, readonly TaskId[]>>();

/** Which waits are read off the taps of each task of hands, straight or from wait to wait. */
export function waitsOnOf(index: PlanIndex): ReadonlyMap<TaskId, readonly TaskId[]> {
  const known = waitsOn.get(index);
  if (known) return known;
  const made = new Map<TaskId, TaskId[]>();
  for (const [wait, { isByHand }] of coursesOf(index)) {
    if (isByHand) continue;
    for (const tapped of tapsBehind(index, wait)) {
      made.set(tapped, [...(made.get(tapped) ?? []), wait]);
    }
  }
  waitsOn.set(index, made);
  return made;
}

function tapsBehind(index: PlanIndex, wait: TaskId): Set<TaskId> {
  const seen = new Set<TaskId>();
  const taps = new Set<TaskId>();
  const follow = (id: TaskId) => {
    if (seen.has(id)) return;
    seen.add(id);
    const { isByHand, waitsFor, ties, sequels } = must(coursesOf(index).get(id), id);
    if (isByHand) {
      taps.add(id);
      return;
    }
    for (const { from } of [...waitsFor, ...ties]) follow(from.activity);
    for (const { to } of sequels) follow(to.activity);
  };
  follow(wait);
  return taps;
}

const isPrecedence = (lag: Lag) => lag.minS !== undefined && lag.minS >= 0;
const isSequence = (lag: Lag) =>
  lag.from.end === 'end' && lag.to.end === 'start' && isPrecedence(lag);
