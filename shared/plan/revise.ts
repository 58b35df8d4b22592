import type { BatchId, CutId, Seconds, TaskId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type {
  Activity,
  Conflict,
  Lag,
  Placement,
  Planner,
  Problem,
  Schedule,
} from '../schedule/index.ts';
import type { BuiltDay, Task } from './built.ts';
import { frozenIn } from './frozen.ts';
import { planAround } from './plan-day.ts';
import type { PlanRefusal } from './refusal.ts';
import { type Rounds, withRounds } from './rounds.ts';
import { type Shut, withShut } from './shut.ts';
import { touchedIn } from './touched.ts';

/** How a task of the running day stands: by whom, where, and when it was, is or will be. */
export type Standing = Placement & { readonly stage: 'waiting' | 'running' | 'done' };

/** The day that is running, and an edit of it that was built with `keepingOf` what has begun. */
export type Revision = {
  readonly before: BuiltDay;
  readonly after: BuiltDay;
  readonly standing: ReadonlyMap<TaskId, Standing>;
  readonly nowS: Seconds;
  /** What the edit may not count on, and when. */
  readonly shut: Shut;
  /** Pieces that came of a cut, where anybody said; of others all that was asked for. */
  readonly came: ReadonlyMap<CutId, number>;
};

export type Revised =
  | {
      readonly ok: true;
      readonly day: BuiltDay;
      readonly schedule: Schedule;
      /** The batches that were planned anew; all others stand where they stood. */
      readonly planned: readonly BatchId[];
      /** What was planned round what stands: this schedule keeps this problem. */
      readonly proof: { readonly problem: Problem; readonly schedule: Schedule };
    }
  | { readonly ok: false; readonly why: 'refused'; readonly refusals: readonly PlanRefusal[] }
  | {
      readonly ok: false;
      readonly why: 'no-room';
      readonly conflicts: readonly Conflict[];
      /** The day round what stands, as it finds no room. */
      readonly day: BuiltDay;
    };

/** Goes on from the first schedule of what is planned anew, round what stands; to the same one. */
export type Better = (day: BuiltDay, schedule: Schedule) => Schedule;

/**
 * A running day after an edit of its plan. What has started keeps its way of work, its hands, its
 * places and its times; a batch that the edit does not touch stays where it is, and gives way in
 * time alone where the others find no room otherwise; only what the edit changes is planned anew.
 */
export function revise(
  asked: Revision,
  planner: Planner,
  options: Parameters<Planner>[1],
  better: Better = (_day, schedule) => schedule,
): Revised {
  const revision = withoutLateDonors(asked);
  const refusals = [...lostBatches(revision), ...outOfTurn(revision), ...notDelivered(revision)];
  if (refusals.length > 0) return { ok: false, why: 'refused', refusals };
  const touched = touchedIn(revision);
  const anew = (others: 'still' | 'yielding') =>
    around({ ...revision, touched, others, better }, planner, options);
  const still = anew('still');
  const made = still.ok ? still : anew('yielding');
  if (made.ok) return { ...made, planned: [...touched] };
  // Why what is planned anew does not fit says more than why it does not even if others give way.
  return { ...(still.ok ? made : still), why: 'no-room' };
}

type Around = Revision & {
  readonly touched: ReadonlySet<BatchId>;
  readonly others: 'still' | 'yielding';
  readonly better: Better;
};

function around(
  { before, after, standing, nowS, shut, touched, others, better }: Around,
  planner: Planner,
  options: Parameters<Planner>[1],
) {
  const past = pastRounds(before, standing, nowS);
  const day = { ...after, tasks: [...after.tasks, ...past.tasks], problem: after.problem };
  const batchOf = new Map(day.tasks.map(({ id, batch }) => [id, batch]));
  const isRound = new Set(past.tasks.map(({ id }) => id));
  const waits = new Set(
    after.problem.activities.flatMap(({ id, modes }) =>
      modes[0]?.length.kind === 'wait' ? [id] : [],
    ),
  );
  // How long pieces lie or wait follows from what is yet to be done with them.
  const runs = (id: TaskId) => (waits.has(id) ? ('start' as const) : ('both' as const));
  const stands = (id: TaskId) => {
    const its = standing.get(id);
    const batch = batchOf.get(id);
    if (!its || batch === undefined) return null;
    if (isRound.has(id) || its.stage === 'done') return { its, times: 'both' as const };
    if (touched.has(batch)) return its.stage === 'waiting' ? null : { its, times: runs(id) };
    // It cannot give way where it is: what is shut is asked of no batch that the edit leaves alone.
    const isShut = its.uses.some(({ resource }) => shut.has(resource));
    const stays = its.stage === 'running' || others === 'still' || isShut;
    return { its, times: stays ? ('both' as const) : ('neither' as const) };
  };
  const open = withShut(after.problem, shut);
  const frozen = frozenIn(
    { ...open, activities: [...after.problem.activities, ...past.activities] },
    { stands, nowS },
  );
  const round: BuiltDay = { ...day, problem: frozen.problem };
  const planned = planAround(round, planner, options);
  if (!planned.ok) return { ...planned, day: round };
  const found = better(round, planned.schedule);
  const whole = withRounds(round, found, {
    given: past.given,
    nowS,
  });
  const settled = frozen.settle(whole.day.problem, whole.schedule, planner, options);
  if (!settled.ok) return { ...settled, day: round };
  const extra = whole.day.problem.activities.slice(frozen.problem.activities.length);
  const problem = {
    ...after.problem,
    activities: [...after.problem.activities, ...past.activities, ...extra],
  };
  return {
    ok: true as const,
    day: { ...whole.day, problem },
    schedule: settled.schedule,
    proof: settled.proof,
  };
}

/** Work that has begun no longer waits for another batch: it was begun with what there was. */
function withoutLateDonors(revision: Revision): Revision {
  const { after, standing } = revision;
  const batchOf = new Map(after.tasks.map(({ id, batch }) => [id, batch]));
  const isLate = ({ from, to }: Lag) =>
    to.end === 'start' &&
    batchOf.get(from.activity) !== batchOf.get(to.activity) &&
    hasBegun(standing, to.activity) &&
    !hasBegun(standing, from.activity);
  const lags = after.problem.lags.filter((lag) => !isLate(lag));
  return { ...revision, after: { ...after, problem: { ...after.problem, lags } } };
}

/** The rounds that have begun or should have: they stay, and those to come are found anew. */
function pastRounds(
  { tasks, problem, upkeep }: BuiltDay,
  standing: Revision['standing'],
  nowS: Seconds,
): Rounds & { readonly given: Rounds['placements'] } {
  const things = new Set(upkeep.map(({ id }) => id));
  const isPast = ({ id, batch }: Task) => {
    const its = standing.get(id);
    return things.has(batch) && its && (its.stage !== 'waiting' || its.startS <= nowS);
  };
  const past = tasks.filter(isPast);
  const ids = new Set(past.map(({ id }) => id));
  const placements = [...ids].flatMap((id) => standing.get(id) ?? []);
  return {
    tasks: past,
    activities: problem.activities.filter(({ id }) => ids.has(id)),
    placements,
    given: placements,
  };
}

/** Begun batches that the edited plan does not have. */
function lostBatches({ before, after, standing }: Revision): PlanRefusal[] {
  const left = new Set(after.batches.map(({ id }) => id));
  const begun = new Set(
    before.tasks.filter(({ id }) => hasBegun(standing, id)).map(({ batch }) => batch),
  );
  return before.batches
    .filter(({ id }) => begun.has(id) && !left.has(id))
    .map(({ name, pieces }) => ({ rule: 'batch-begun', batch: name, pieces }));
}

/** Cuts of which it asks for more than came, and for more than the plan before it did. */
function notDelivered({ before, after, came }: Revision): PlanRefusal[] {
  return after.pull.flatMap(({ cut, name, pieces }): PlanRefusal[] => {
    const has = came.get(cut);
    const was = before.pull.find((line) => line.cut === cut)?.pieces ?? 0;
    if (has === undefined || pieces <= Math.max(has, was)) return [];
    return [{ rule: 'not-delivered', cut: name, needs: pieces, has }];
  });
}

/**
 * Steps that have begun and are gone, or that could not be done so any more, or that something new
 * would have to come before.
 */
function outOfTurn({ before, after, standing }: Revision): PlanRefusal[] {
  const activities = new Map(after.problem.activities.map((each) => [each.id, each]));
  const isNew = (id: TaskId) => !standing.has(id);
  const early = new Set(
    after.problem.lags.filter((lag) => isBefore(lag) && isNew(lag.from.activity)).map(toOf),
  );
  const names = new Map(after.batches.map(({ id, name }) => [id, name]));
  return before.tasks.flatMap(({ id, batch, title }): PlanRefusal[] => {
    const name = names.get(batch);
    if (!name || !hasBegun(standing, id)) return [];
    const sound = isDoneSo(activities.get(id), standing.get(id)) && !early.has(id);
    return sound ? [] : [{ rule: 'step-begun', batch: name, step: title }];
  });
}

const hasBegun = (standing: Revision['standing'], id: TaskId) =>
  (standing.get(id)?.stage ?? 'waiting') !== 'waiting';
const toOf = ({ to }: Lag) => to.activity;
const isBefore = ({ from, to, minS }: Lag) =>
  from.end === 'end' && to.end === 'start' && minS !== undefined && minS >= seconds(0);
const isDoneSo = (activity: Activity | undefined, its: Standing | undefined) =>
  activity?.modes.some(({ id }) => id === its?.mode) ?? false;
