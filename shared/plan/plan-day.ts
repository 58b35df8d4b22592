import type { BatchId, Seconds, TaskId } from '../kernel/index.ts';
import { hours, minutes, seconds } from '../kernel/index.ts';
import type {
  Activity,
  Conflict,
  Lag,
  Length,
  Mode,
  Planned,
  Planner,
  Problem,
  Resource,
  Schedule,
} from '../schedule/index.ts';
import type { Aim, BuiltDay } from './built.ts';
import { layOut } from './lay-out.ts';
import { refusedAtOnce } from './overbooked.ts';
import { keptApart, keptOut, pooled } from './pooled.ts';
import { remembering } from './remembering.ts';
import { kitchenResource } from './resources.ts';
import { withRounds } from './rounds.ts';

/**
 * Work up to the last second before a break comes after it when it slips by a second; so much of
 * each span of a hand's time is left free at its end where the day allows (our choice).
 */
const BEFORE_A_BREAK_S = minutes(30);

/** What was not found with racks taken together is looked for so often with each by itself. */
const ATTEMPTS_TO_SAY_WHY = 4;

/** A day with its rounds among its tasks, and when everything is done; or what does not fit. */
export type DayPlanned =
  | { readonly ok: true; readonly day: BuiltDay; readonly schedule: Schedule }
  | { readonly ok: false; readonly conflicts: readonly Conflict[] };

type Options = Parameters<Planner>[1];

/**
 * The schedule of a built day: with the usual time in hand and fires that keep their heat where
 * every promise can be kept so, and else without. In any case it keeps the day's own problem, whose
 * waits need no more than they must and whose hands work to the end. What the smokers, the tables
 * and the cabinets then ask for is put between, and moves nothing.
 */
export function planDay(day: BuiltDay, planner: Planner, options: Options): DayPlanned {
  const refused = refusedAtOnce(day.problem, planner, options);
  if (refused) return refused;
  const planned = mainWork(day, planner, options);
  if (!planned.ok) return planned;
  const whole = withRounds(day, planned.schedule);
  const settled = planner(pinned(whole.day.problem, whole.schedule), options);
  if (!settled.ok) return settled;
  return { ok: true, day: whole.day, schedule: settled.schedule };
}

function mainWork(day: BuiltDay, planner: Planner, options: Options): Planned {
  if (options.isTrial) return planner(day.problem, options);
  const wishes = wishesOf(day);
  const trial = { ...options, isTrial: true };
  const ask = remembering(planner);
  const roomy = new Map([wishes[0], wishes.at(-1)].map((wish) => [wish, wish && pooled(wish)]));
  // Neither the dearest wish nor the humblest finds time for everything, wherever it lies: then
  // none between them does, and what is left is to say why.
  if ([...roomy.values()].every((wish) => wish && !ask(wish, trial).ok)) {
    return planner(day.problem, { ...options, attempts: ATTEMPTS_TO_SAY_WHY });
  }
  const inOne = (wish: Problem) => inOneStep(wish, ask, trial);
  const inTwo = (wish: Problem) => inTwoSteps(wish, roomy.get(wish) ?? pooled(wish), ask, trial);
  const schedule = freshest(wishes, inTwo, day) ?? freshest(wishes, inOne, day);
  return schedule ? { ok: true, schedule } : planner(day.problem, options);
}

/** The schedule of a day of which much stands: what is left is planned with its racks in one. */
export function planAround(day: BuiltDay, planner: Planner, options: Options): Planned {
  const refused = refusedAtOnce(day.problem, planner, options);
  if (refused) return refused;
  if (options.isTrial) return planner(day.problem, options);
  const inOne = (wish: Problem) => inOneStep(wish, planner, { ...options, isTrial: true });
  const schedule = freshest(wishesOf(day), inOne, day);
  return schedule ? { ok: true, schedule } : planner(day.problem, options);
}

function inOneStep(wish: Problem, planner: Planner, options: Options): Schedule | null {
  const planned = planner(wish, options);
  return planned.ok ? planned.schedule : null;
}

/** The first schedule that is on time and fresh, or of those on time the freshest. */
function freshest(
  wishes: readonly Problem[],
  plan: (wish: Problem) => Schedule | null,
  day: BuiltDay,
): Schedule | null {
  let best: Dated | undefined;
  for (const wish of wishes) {
    const schedule = plan(wish);
    if (!schedule || !isOnTime(schedule, day.problem)) continue;
    const earlyS = earlinessOf(schedule, day);
    if (earlyS <= FRESH_S) return schedule;
    if (best === undefined || earlyS < best.earlyS) best = { schedule, earlyS };
  }
  return best?.schedule ?? null;
}

/** What is wished for, the most first: time in hand is worth more than an unchanged fire. */
export function wishesOf({ problem, aims }: BuiltDay): Problem[] {
  const atHome = withFiresKept(problem, aims);
  return [
    withTimeInHand(atHome, aims, 1),
    withTimeInHand(atHome, aims, 0.5),
    withTimeInHand(problem, aims, 1),
    withTimeInHand(problem, aims, 0.5),
    atHome,
    problem,
  ];
}

type Dated = { readonly schedule: Schedule; readonly earlyS: number };

/**
 * A batch that begins hours before it must stands about for hours: so early, on the average, and
 * another plan is looked for (our choice).
 */
const FRESH_S = hours(3);

/** How much earlier than they must its batches begin, on the average. */
function earlinessOf({ placements }: Schedule, { batches, tasks }: BuiltDay): number {
  const starts = new Map(placements.map(({ activity, startS }) => [activity, startS]));
  const first = new Map<BatchId, number>();
  for (const { id, batch } of tasks) {
    const startS = starts.get(id) ?? Number.POSITIVE_INFINITY;
    first.set(batch, Math.min(startS, first.get(batch) ?? startS));
  }
  const early = batches.map(({ id, beginByS }) => beginByS - (first.get(id) ?? beginByS));
  return early.reduce((sum, each) => sum + each, 0) / early.length;
}

/** So often a load that finds no rack is sent to another smoker, or to another time. */
const SENT_ELSEWHERE = 8;

/**
 * When everything is done, and then where it lies. Null where that leads nowhere; a planner that
 * looks at both together may still find a way.
 */
function inTwoSteps(
  wish: Problem,
  pool: Problem,
  planner: Planner,
  options: Options,
): Schedule | null {
  let roomy: Problem | null = pool;
  for (let sent = 0; roomy !== null && sent <= SENT_ELSEWHERE; sent++) {
    const timed = planner(roomy, options);
    if (!timed.ok) return null;
    const laid = layOut(wish, timed.schedule);
    if (laid.ok) {
      const settled = planner(pinned(wish, laid), options);
      return settled.ok ? settled.schedule : null;
    }
    const { placements } = timed.schedule;
    roomy = keptOut(roomy, laid.stuck) ?? keptApart(roomy, wish, placements, laid.stuck);
  }
  return null;
}

/** Everything where it is: the planner has only to say what waits for what. */
export function pinned(problem: Problem, { placements }: Pick<Schedule, 'placements'>): Problem {
  const placed = new Map(placements.map(({ activity, ...pin }) => [activity, pin]));
  return {
    ...problem,
    activities: problem.activities.map((activity) => {
      const pin = placed.get(activity.id);
      return pin === undefined ? activity : { ...activity, pin };
    }),
  };
}

/** Loads go only where such a fire is kept, if there is one place like that for them. */
function withFiresKept(problem: Problem, aims: readonly Aim[]): Problem {
  const kept = new Map<string, string>(
    aims.flatMap((aim) => (aim.kind === 'keeps-fire' ? [[aim.fire, aim.state]] : [])),
  );
  const keeps = ({ states }: Mode) =>
    states.every(({ resource, state }) => (kept.get(resource) ?? state) === state);
  return {
    ...problem,
    activities: problem.activities.map((activity) => {
      const modes = activity.modes.filter(keeps);
      return modes.length > 0 ? { ...activity, modes } : activity;
    }),
  };
}

/** So much of the wished time in hand as `part` says. */
function withTimeInHand(problem: Problem, aims: readonly Aim[], part: number): Problem {
  const of = (kind: 'lasts' | 'ready-ahead') =>
    new Map(
      aims.flatMap((aim) =>
        aim.kind === kind ? [[aim.activity, seconds(Math.round(aim.leastS * part))]] : [],
      ),
    );
  const lasts = of('lasts');
  const ahead = of('ready-ahead');
  return {
    ...problem,
    activities: problem.activities.map((activity) => drawnOut(activity, lasts)),
    lags: problem.lags.map((lag) => spaced(lag, ahead)),
    resources: problem.resources.map((resource) => restedEarly(resource, part)),
  };
}

type Leasts = ReadonlyMap<TaskId, Seconds>;

function drawnOut(activity: Activity, lasts: Leasts): Activity {
  const leastS = lasts.get(activity.id);
  if (leastS === undefined || activity.pin) return activity;
  const modes = activity.modes.map((mode) => ({ ...mode, length: atLeast(mode.length, leastS) }));
  return { ...activity, modes };
}

function atLeast(length: Length, leastS: Seconds): Length {
  if (length.kind !== 'wait' || length.minS >= leastS) return length;
  return { ...length, minS: leastS };
}

function spaced(lag: Lag, ahead: Leasts): Lag {
  const leastS = ahead.get(lag.to.activity);
  if (leastS === undefined || lag.to.end !== 'start' || lag.minS === undefined) return lag;
  // After a wait there is no gap to widen: the wait itself is drawn out.
  return (lag.maxS ?? leastS) < leastS ? lag : { ...lag, minS: leastS };
}

function restedEarly(resource: Resource, part: number): Resource {
  if (resource.kind !== 'capacity' || !resource.open) return resource;
  if (kitchenResource(resource.id).kind !== 'hand') return resource;
  const open = resource.open
    .map(({ start, end }) => ({ start, end: seconds(end - BEFORE_A_BREAK_S * part) }))
    .filter(({ start, end }) => start < end);
  return { ...resource, open };
}

function isOnTime({ placements }: Schedule, { goals }: Problem): boolean {
  const placed = new Map(placements.map((placement) => [placement.activity, placement]));
  return goals.every(({ activity, end, dueS }) => {
    const placement = placed.get(activity);
    return placement !== undefined && placement[`${end}S`] <= dueS;
  });
}
