import type { Seconds, TaskId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type {
  Activity,
  Mode,
  Placement,
  Planned,
  Planner,
  Problem,
  ResourceId,
  Schedule,
  Use,
} from '../schedule/index.ts';

/** What stands of an activity: where and by whom, and both times, its start alone or neither. */
export type Stands = { readonly its: Placement; readonly times: 'both' | 'start' | 'neither' };

type Facts = {
  readonly stands: (id: TaskId) => Stands | null;
  readonly nowS: Seconds;
};

/** A problem round what stands, and the way back from its schedule to the day's own. */
export type Frozen = {
  readonly problem: Problem;
  settle(
    problem: Problem,
    schedule: Pick<Schedule, 'placements'>,
    planner: Planner,
    options: Parameters<Planner>[1],
  ): Settled;
};

/** The day's own schedule, and the problem round what stands with the schedule that keeps it. */
export type Settled =
  | {
      readonly ok: true;
      readonly schedule: Schedule;
      readonly proof: { readonly problem: Problem; readonly schedule: Schedule };
    }
  | Extract<Planned, { ok: false }>;

/**
 * A problem in which what stands is pinned and everything else comes from now on. A day is not
 * always as a plan would have it: one hand begins two things at once, a wait ran over. So what
 * stands is not held to the lags between its members, nor to room that they take from one another,
 * nor to promises that are broken already; all that is planned round it is held to everything.
 */
export function frozenIn(problem: Problem, { stands, nowS }: Facts): Frozen {
  const room = new Room(problem);
  const standing = new Map<TaskId, Stands>();
  for (const { id } of problem.activities) {
    const its = stands(id);
    if (its) standing.set(id, its);
  }
  const inOrder = problem.activities.toSorted(
    (a, b) => startOf(standing, a) - startOf(standing, b),
  );
  const pinned = new Map(
    inOrder.map((each) => [each.id, pin(each, standing.get(each.id), room, nowS)]),
  );
  const isFixed = (id: TaskId) => standing.get(id)?.times === 'both';
  const lastS = Math.max(problem.horizonS, ...[...standing.values()].map(({ its }) => its.endS));
  const still: Problem = {
    ...problem,
    horizonS: seconds(lastS),
    activities: problem.activities.map((each) => {
      const its = pinned.get(each.id);
      if (its?.pin?.startS !== undefined) return its;
      return { ...(its ?? each), releaseS: seconds(Math.max(nowS, each.releaseS ?? 0)) };
    }),
    lags: problem.lags.filter(({ from, to }) => !isFixed(from.activity) || !isFixed(to.activity)),
    clashes: problem.clashes.filter(
      ({ upper, lower }) => !isFixed(upper.activity) || !isFixed(lower.activity),
    ),
    goals: problem.goals.map((goal) => {
      const its = standing.get(goal.activity)?.its;
      return its ? { ...goal, dueS: seconds(Math.max(goal.dueS, its[`${goal.end}S`])) } : goal;
    }),
  };
  return { problem: still, settle: (...asked) => settle(standing, ...asked) };
}

const startOf = (standing: ReadonlyMap<TaskId, Stands>, { id }: Activity) =>
  standing.get(id)?.its.startS ?? 0;

/** The links between all that is placed now, told of the day's own modes and places. */
function settle(
  standing: ReadonlyMap<TaskId, Stands>,
  problem: Problem,
  { placements }: Pick<Schedule, 'placements'>,
  planner: Planner,
  options: Parameters<Planner>[1],
): Settled {
  const placed = new Map(placements.map(({ activity, ...its }) => [activity, its]));
  const activities = problem.activities.map((each) => {
    const its = placed.get(each.id);
    return its ? { ...each, pin: its } : each;
  });
  const pinned = { ...problem, activities };
  const settled = planner(pinned, options);
  if (!settled.ok) return settled;
  const { links } = settled.schedule;
  const real = settled.schedule.placements.map((each): Placement => {
    const its = standing.get(each.activity)?.its;
    return its ? { ...each, mode: its.mode, uses: its.uses } : each;
  });
  const proof = { problem, schedule: settled.schedule };
  return { ok: true, schedule: { placements: real, links }, proof };
}

function pin(activity: Activity, stands: Stands | undefined, room: Room, nowS: Seconds): Activity {
  const mode = activity.modes.find(({ id }) => id === stands?.its.mode);
  if (!stands || !mode) return activity;
  const { startS, endS, uses } = stands.its;
  if (stands.times === 'neither') {
    return { ...activity, modes: [mode], pin: { mode: mode.id, uses } };
  }
  const found = room.take(mode, stands.its);
  const pinned = { mode: mode.id, startS, uses: found.uses };
  if (stands.times === 'both') {
    const { deadlineS: _late, ...undated } = activity;
    return { ...undated, modes: [found.mode], pin: { ...pinned, endS } };
  }
  return { ...activity, modes: [lastingTill(found.mode, seconds(nowS - startS))], pin: pinned };
}

/** A wait or a stay that runs: it has lasted so long already. */
function lastingTill(mode: Mode, soFarS: Seconds): Mode {
  const { length } = mode;
  if (length.kind !== 'wait') return mode;
  const minS = seconds(Math.max(length.minS, soFarS));
  return { ...mode, length: { ...length, minS, maxS: seconds(Math.max(length.maxS, minS)) } };
}

type Taken = { readonly startS: number; readonly endS: number; readonly amount: number };

/** What stands takes room in the order of time; what finds none counts as standing beside it. */
class Room {
  readonly #capacity: ReadonlyMap<ResourceId, number>;
  readonly #changeS: ReadonlyMap<ResourceId, number>;
  readonly #taken = new Map<ResourceId, Taken[]>();
  readonly #states = new Map<ResourceId, (Taken & { readonly state: string })[]>();

  constructor({ resources }: Problem) {
    this.#capacity = new Map(
      resources.flatMap((each) => (each.kind === 'capacity' ? [[each.id, each.capacity]] : [])),
    );
    this.#changeS = new Map(
      resources.flatMap((each) =>
        each.kind === 'state'
          ? [[each.id, Math.max(each.defaultChangeS, ...each.changes.map((c) => c.takesS))]]
          : [],
      ),
    );
  }

  take(mode: Mode, { startS, endS, uses }: Placement): { mode: Mode; uses: Use[] } {
    const left = mode.needs.flatMap((need, number) => {
      const resource = uses.find((use) => use.need === number)?.resource;
      if (!resource || !this.#fits(resource, { startS, endS, amount: need.amount })) return [];
      return [{ need, resource }];
    });
    const states = mode.states.filter(({ resource, state }) =>
      this.#agrees(resource, { startS, endS, amount: 0, state }),
    );
    return {
      mode: { ...mode, needs: left.map(({ need }) => need), states },
      uses: left.map(({ resource }, need) => ({ need, resource })),
    };
  }

  #fits(resource: ResourceId, taken: Taken): boolean {
    const row = this.#taken.get(resource) ?? [];
    const beside = row.filter((other) => meet(other, taken));
    const used = beside.reduce((sum, { amount }) => sum + amount, taken.amount);
    if (used > (this.#capacity.get(resource) ?? 0)) return false;
    this.#taken.set(resource, [...row, taken]);
    return true;
  }

  #agrees(resource: ResourceId, taken: Taken & { readonly state: string }): boolean {
    const changeS = this.#changeS.get(resource) ?? 0;
    const row = this.#states.get(resource) ?? [];
    const against = row.some(
      (other) =>
        other.state !== taken.state && meet({ ...other, endS: other.endS + changeS }, taken),
    );
    if (against) return false;
    this.#states.set(resource, [...row, taken]);
    return true;
  }
}

const meet = (a: Taken, b: Taken) => a.startS < b.endS && b.startS < a.endS;
