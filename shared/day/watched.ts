import { chosenLimits, chosenOptions, type Moment } from '../catalogue/index.ts';
import type { BatchId, Seconds, StationId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Batch, FoodKind, Task } from '../plan/index.ts';
import { groupBy, type PlanIndex } from './plan-index.ts';

/** What a batch asks to be looked at, as its plan has it. */
export type Watched = {
  readonly batch: Batch;
  readonly tasks: readonly Task[];
  readonly serve: TaskId;
  /** What its cook makes of it, to the limits. */
  readonly food: FoodKind;
  /** The last that finds how hot its coldest point is; null for what is not cooked. */
  readonly probe: Task | null;
  readonly reheats: readonly Task[];
  /** The moment from which it cools, and what looks at each stage. */
  readonly cooling: { readonly from: Moments; readonly stages: readonly Task[] } | null;
  /** Stretches that count as out of the cooler. */
  readonly outs: readonly { readonly from: Moments; readonly to: Moments }[];
  /** Where it is kept to be sold, in a cabinet or in a cooler. */
  readonly places: readonly Place[];
  /** Work that brings it to the pass: what is barred does not begin. */
  readonly toPass: ReadonlySet<TaskId>;
};

/** A wait that keeps food to be sold, and the longest that its route lets it. */
export type Place = {
  readonly task: TaskId;
  readonly in: 'cabinet' | 'cooler';
  readonly mostS: Seconds;
};

/** The start or the end of a task. */
export type Moments = { readonly task: TaskId; readonly end: 'start' | 'end' };

const known = new WeakMap<PlanIndex, ReadonlyMap<BatchId, Watched>>();

/** What the batches of a plan ask to be looked at, made once for each plan. */
export function watchedIn(index: PlanIndex): ReadonlyMap<BatchId, Watched> {
  const made = known.get(index);
  if (made) return made;
  const byBatch = groupBy([...index.tasks.values()], ({ batch }) => batch);
  const goals = new Map(
    index.plan.built.problem.goals.map(({ id, activity }) => [`${id}`, activity]),
  );
  const watched = new Map(
    [...index.batches.values()].map((batch) => {
      const serve = must(goals.get(batch.id), batch.id);
      return [batch.id, watchedOf(index, batch, byBatch.get(batch.id) ?? [], serve)] as const;
    }),
  );
  known.set(index, watched);
  return watched;
}

function watchedOf(index: PlanIndex, batch: Batch, tasks: readonly Task[], serve: TaskId): Watched {
  const asks = (of: NonNullable<Task['check']>['of']) =>
    tasks.filter(({ work, check }) => work === 'hands' && check?.of === of);
  const cores = tasks.filter(
    ({ work, check }) => work === 'hands' && check?.coreAtLeastC !== undefined,
  );
  const probe = cores.findLast(({ check }) => (check?.of ?? 'the cook') === 'the cook') ?? null;
  const limits = limitsOn(index, batch, tasks);
  const [cool] = limits.filter(({ rule }) => rule === 'cooling');
  return {
    batch,
    tasks,
    serve,
    food: foodOf(index, batch, tasks),
    probe,
    reheats: asks('reheating'),
    cooling: cool ? { from: cool.from, stages: asks('cooling') } : null,
    outs: limits.filter(({ rule }) => rule === 'out-of-temperature'),
    places: tasks.flatMap(({ id }) => placeOf(index, id, serve) ?? []),
    toPass: toPassOf(index, tasks, probe, serve),
  };
}

/** Null for all that keeps nothing for a service, such as a night in the cooler before the fire. */
function placeOf(index: PlanIndex, task: TaskId, serve: TaskId): Place | null {
  const mode = index.activities.get(task)?.modes[0];
  if (mode?.length.kind !== 'wait') return null;
  const mostS = mode.length.maxS;
  const isWarm = mode.needs.some(({ role }) => role === 'pans' || role === 'whole');
  if (isWarm) return { task, in: 'cabinet', mostS };
  const isCold = mode.needs.some(({ role }) => role === 'cooler') && endsWith(index, task, serve);
  return isCold ? { task, in: 'cooler', mostS } : null;
}

const endsWith = (index: PlanIndex, task: TaskId, serve: TaskId): boolean =>
  (index.lagsInto.get(task) ?? []).some(
    ({ from, to }) => to.end === 'end' && from.activity === serve && from.end === 'end',
  );

type LimitOn = { readonly rule: string | undefined; readonly from: Moments; readonly to: Moments };

/** The longest times of its route that bind with the options of its dish. */
function limitsOn({ plan, tasks: all }: PlanIndex, batch: Batch, tasks: readonly Task[]) {
  const route = plan.catalogue.routes.find(({ id }) => id === batch.route);
  const service = plan.cookPlan.services.find(({ id }) => id === batch.service);
  const choices = service?.dishes.find(({ dish }) => dish === batch.dish)?.choices ?? {};
  const limits = route ? chosenLimits(route, chosenOptions(route, choices)) : [];
  const momentOf = ({ step, end }: Moment): Moments[] => {
    const task = tasks.find((each) => each.step === step);
    return task && all.has(task.id) ? [{ task: task.id, end }] : [];
  };
  return limits.flatMap(({ rule, from: start, to: stop }): LimitOn[] => {
    const [from, to] = [...momentOf(start), ...momentOf(stop)];
    return from && to ? [{ rule, from, to }] : [];
  });
}

/** What is done to whole meat may make it something else; birds and plants stay what they are. */
function foodOf({ plan }: PlanIndex, { cut, route }: Batch, tasks: readonly Task[]): FoodKind {
  const species = plan.catalogue.cuts.find(({ id }) => id === cut)?.species;
  const isMeat = species === 'beef' || species === 'pork' || species === 'lamb';
  if (species && !isMeat) return species;
  const steps = plan.catalogue.routes.find(({ id }) => id === route)?.steps ?? [];
  const made = steps.filter(({ id }) => tasks.some(({ step }) => step === id));
  return made.findLast((step) => step.makes)?.makes ?? 'intact';
}

/**
 * Work of hands after the last probe that takes nothing out of a fire; of what is not cooked, what
 * comes straight before it is served. What looks at it is never barred.
 */
function toPassOf(
  index: PlanIndex,
  tasks: readonly Task[],
  probe: Task | null,
  serve: TaskId,
): Set<TaskId> {
  const after = probe ? downstream(index, probe.id) : null;
  return new Set(
    tasks
      .filter(({ work, check }) => work === 'hands' && !check)
      .filter(({ id }) => (after ? after.has(id) && !takesOff(index, id) : leads(index, id, serve)))
      .map(({ id }) => id),
  );
}

function downstream(index: PlanIndex, task: TaskId): Set<TaskId> {
  const found = new Set<TaskId>();
  const follow = (id: TaskId) => {
    for (const { from, to, minS } of index.lagsOutOf.get(id) ?? []) {
      const isNext = from.end === 'end' && to.end === 'start' && minS !== undefined && minS >= 0;
      if (!isNext || found.has(to.activity)) continue;
      found.add(to.activity);
      follow(to.activity);
    }
  };
  follow(task);
  return found;
}

const takesOff = (index: PlanIndex, task: TaskId): boolean =>
  (index.lagsOutOf.get(task) ?? []).some(
    ({ to }) => to.end === 'end' && index.tasks.get(to.activity)?.work === 'place',
  );

/** Work that sets out or carves what is sold next. */
export const bringsToPass = (index: PlanIndex, { toPass, serve }: Watched, task: TaskId): boolean =>
  toPass.has(task) && leads(index, task, serve);

const leads = (index: PlanIndex, task: TaskId, serve: TaskId): boolean =>
  (index.lagsOutOf.get(task) ?? []).some(({ to }) => to.activity === serve && to.end === 'start');

/** How long a beat of a round is, and how far it may be moved. */
export type Beat = {
  readonly everyS: Seconds;
  readonly earlyS: Seconds;
  readonly lateS: Seconds;
  readonly station: StationId | null;
};

/** What a place asks to be looked at, by the round that its kitchen gives it, or by this. */
export function beatOf({ plan }: PlanIndex, uses: readonly string[], usual: Beat): Beat {
  const upkeep = plan.built.upkeep.find((each) => each.uses.some((use) => uses.includes(use)));
  const round = upkeep?.rounds.find(({ task }) => task.check?.of === 'holding');
  if (!round?.everyS) return usual;
  const { everyS, earlyS, lateS, task } = round;
  return { everyS, earlyS, lateS, station: task.station };
}
