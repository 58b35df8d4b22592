import type { Celsius, CutId, Instant, Seconds, TaskId } from '../kernel/index.ts';
import { after, hours, instant, minutes, must, seconds } from '../kernel/index.ts';
import { kitchenResource, type Task } from '../plan/index.ts';
import { type CheckEntry, type CheckOn, checkKey } from './check-event.ts';
import { brokenBy, withinS } from './check-limits.ts';
import { type Failure, type Standing, standingOfCheck } from './check-story.ts';
import type { Deed } from './deed.ts';
import {
  again,
  type Looking,
  type OpenCheck,
  opened,
  rawStation,
  sinceFailed,
} from './open-check.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { isSendingBack } from './sent-back.ts';
import { type Beat, beatOf } from './watched.ts';

/** Common practice, no source: a kitchen's own round says otherwise. */
const USUAL_BEAT: Beat = {
  everyS: hours(4),
  earlyS: minutes(60),
  lateS: minutes(60),
  station: null,
};
/** A thermometer is tried before the first reading of a day (common practice, no source). */
const TRIED_IN_S = hours(2);
/** A case is put away no later than this (judged). */
const PUT_AWAY_IN_S = minutes(30);
/** So long before its time is over a table is to be washed (judged). */
const WASH_SAID_S = minutes(30);

/** All that is open of the things of a kitchen, and of what came into it. */
export function placeChecks(look: Looking, gone: ReadonlySet<string>): OpenCheck[] {
  return [
    ...coolerChecks(look, gone),
    ...thermometerChecks(look),
    ...tableChecks(look),
    ...receivingChecks(look),
  ];
}

function coolerChecks(look: Looking, gone: ReadonlySet<string>): OpenCheck[] {
  const { index, state } = look;
  const passages = passagesOf(state);
  return index.plan.kitchen.coolers.flatMap(({ id: cooler }): OpenCheck[] => {
    const tasks = usersOf(index).get(`cooler:${cooler}`)?.tasks ?? [];
    const here = tasks.flatMap(({ id, batch }) => {
      const { startedAt, finishedAt } = must(passages.get(id), id);
      return startedAt !== null && finishedAt === null && !gone.has(batch) ? [startedAt] : [];
    });
    if (here.length === 0) return [];
    const since = instant(Math.min(...here));
    const beat = beatOf(index, [`cooler:${cooler}`], USUAL_BEAT);
    const on = { kind: 'cold-hold', cooler } as const;
    const standing = standingOfThing(look, on);
    const okAt = standing.kind === 'open' ? (standing.okAt ?? since) : since;
    const from = instant(Math.max(okAt, since));
    const times = {
      fromAt: after(from, seconds(beat.everyS - beat.earlyS)),
      dueAt: after(from, beat.everyS),
      lateAt: after(from, seconds(beat.everyS + beat.lateS)),
    };
    const station = beat.station ?? must(tasks[0], cooler).station;
    return openThing(look, { on, station, standing, times });
  });
}

/** Once on each day that anybody works. */
function thermometerChecks(look: Looking): OpenCheck[] {
  const { kitchen } = look.index.plan;
  const began = Math.min(...[...passagesOf(look.state).values()].map(startedOr));
  if (!kitchen.thermometers || !Number.isFinite(began)) return [];
  const from = instant(began);
  return kitchen.thermometers.flatMap(({ id: thermometer, station }): OpenCheck[] => {
    const on = { kind: 'thermometer', thermometer } as const;
    const standing = standingOfThing(look, on);
    if (standing.kind === 'open' && standing.okAt !== null) return [];
    const times = { fromAt: from, dueAt: from, lateAt: after(from, TRIED_IN_S) };
    return openThing(look, { on, station, standing, times });
  });
}

const startedOr = ({ startedAt }: { readonly startedAt: Instant | null }) =>
  startedAt ?? Number.POSITIVE_INFINITY;

/** A table that food has lain on since it was last washed, however long nobody is at it now. */
function tableChecks(look: Looking): OpenCheck[] {
  const mostS = withinS(look.profile, 'clean-interval');
  if (mostS === null) return [];
  const passages = passagesOf(look.state);
  return [...usersOf(look.index)].flatMap(([resource, { tasks, washes }]): OpenCheck[] => {
    const thing = kitchenResource(resource as Parameters<typeof kitchenResource>[0]);
    if (thing.kind !== 'table') return [];
    const { station, number } = thing;
    const on = { kind: 'clean', station, table: number ?? null } as const;
    const washed = Math.max(
      ...washes.map((id) => passages.get(id)?.finishedAt ?? 0),
      ...(look.said.get(keyOf(on)) ?? []).map(({ at }) => at),
      0,
    );
    const used = tasks
      .map(({ id }) => must(passages.get(id), id))
      .filter(({ finishedAt }) => finishedAt === null || finishedAt > washed)
      .map((passage) => Math.max(startedOr(passage), washed));
    const since = Math.min(...used);
    if (!Number.isFinite(since)) return [];
    return opened(look, { on, station, ...washBy(instant(since), mostS) });
  });
}

const keyOf = ({ station, table }: { station: string; table: number | null }) =>
  `clean ${station} ${table ?? ''}`;

const washBy = (since: Instant, mostS: Seconds) => ({
  fromAt: after(since, seconds(mostS / 2)),
  dueAt: after(since, seconds(mostS - WASH_SAID_S)),
  lateAt: after(since, mostS),
});

/**
 * What came of each cut, one arrival after the other. Whose temperature was written down as it came
 * is looked at already.
 */
function receivingChecks(look: Looking): OpenCheck[] {
  const { deliveries, lots } = look.state.happened;
  const today = [...lots.values()].filter(({ id }) => id.startsWith(`${look.state.day}-`));
  const cuts = new Set([...deliveries.keys(), ...today.map(({ cut }) => cut)]);
  return [...cuts].flatMap((cut): OpenCheck[] => {
    const own: Arrival[] = today.filter((lot) => lot.cut === cut);
    const counted = deliveries.get(cut);
    const isCountedAlone =
      counted &&
      counted.pieces > 0 &&
      !own.some(({ at }) => at === counted.at) &&
      !isRestOfWhatWentBack(look, cut, counted.at);
    const arrivals = isCountedAlone ? [...own, { ...counted, tempC: null }] : own;
    const open = arrivals.map((arrival) => arrivalCheck(look, cut, arrival));
    return open.find((each) => each.length > 0) ?? [];
  });
}

/** What is left once some of it went back is counted then, and was looked at before. */
const isRestOfWhatWentBack = ({ said }: Looking, cut: CutId, at: Instant): boolean =>
  (said.get(checkKey({ kind: 'receiving', cut })) ?? []).some(
    (entry) => entry.at === at && isSendingBack(entry),
  );

type Arrival = Deed & { readonly tempC: Celsius | null };

function arrivalCheck(look: Looking, cut: CutId, { at, by, tempC }: Arrival): OpenCheck[] {
  const on: CheckOn = { kind: 'receiving', cut };
  const station = rawStation(look.index);
  const standing = standingOfThing(look, on, at);
  const isUnsaid = standing.kind === 'open' && standing.okAt === null;
  if (isUnsaid && tempC !== null) {
    const breach = brokenBy(look.profile, { on, food: null, tempC, tookS: seconds(0) });
    if (!breach) return [];
    const failure: Failure = { at, by, tempC, breach };
    return openThing(look, { on, station, standing: { kind: 'failed', failure }, times: null });
  }
  if (standing.kind === 'open' && standing.okAt !== null) return [];
  const times = { fromAt: at, dueAt: at, lateAt: after(at, PUT_AWAY_IN_S) };
  return openThing(look, { on, station, standing, times });
}

function standingOfThing(look: Looking, on: CheckOn, since = instant(0)): Standing {
  const broken = (entry: CheckEntry) =>
    entry.kind === 'checkRecorded'
      ? brokenBy(look.profile, { on, food: null, tempC: entry.tempC, tookS: seconds(0) })
      : null;
  return standingOfCheck(look.said, on, { since, broken });
}

type Open = {
  readonly on: CheckOn;
  readonly station: OpenCheck['station'];
  readonly standing: Standing;
  readonly times: Pick<OpenCheck, 'fromAt' | 'dueAt' | 'lateAt'> | null;
};

function openThing(look: Looking, { on, station, standing, times }: Open): OpenCheck[] {
  switch (standing.kind) {
    case 'ended':
      return [];
    case 'failed': {
      const { failure } = standing;
      return opened(look, { on, station, ...sinceFailed(failure), failed: failure });
    }
    case 'mending':
      return opened(look, { on, station, ...again(standing.since), isMending: true });
    default:
      return times ? opened(look, { on, station, ...times }) : [];
  }
}

/** What takes a table or a cooler, as planned, and the rounds that wash it. */
type Users = { readonly tasks: readonly Task[]; readonly washes: readonly TaskId[] };

const users = new WeakMap<PlanIndex, ReadonlyMap<string, Users>>();

/** By the name of the table or cooler, made once for each plan. */
function usersOf(index: PlanIndex): ReadonlyMap<string, Users> {
  const known = users.get(index);
  if (known) return known;
  const tasksOf = new Map<string, Task[]>();
  for (const task of index.tasks.values()) {
    if (!index.batches.has(task.batch)) continue;
    for (const { resource } of index.placements.get(task.id)?.uses ?? []) {
      if (!resource.startsWith('table:') && !resource.startsWith('cooler:')) continue;
      tasksOf.set(resource, [...(tasksOf.get(resource) ?? []), task]);
    }
  }
  const made = new Map(
    [...tasksOf].map(([id, tasks]) => [id, { tasks, washes: washesOf(index, id) }] as const),
  );
  users.set(index, made);
  return made;
}

function washesOf({ plan, tasks }: PlanIndex, table: string): TaskId[] {
  const upkeep = plan.built.upkeep.filter(({ uses }) => uses.some((use) => use === table));
  const groups = new Set<string>(upkeep.map(({ id }) => id));
  return [...tasks.values()].filter(({ batch }) => groups.has(batch)).map(({ id }) => id);
}
