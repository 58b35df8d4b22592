import {
  after,
  type Celsius,
  celsius,
  type Instant,
  type PersonId,
  type Random,
  type Seconds,
  type SmokerId,
  seconds,
  seeded,
} from '../../shared/kernel/index.ts';
import { type BuiltDay, fireOf, kitchenResource } from '../../shared/plan/index.ts';
import type { Activity, Mode, Placement, Schedule } from '../../shared/schedule/index.ts';
import { type DemoPlan, type DemoTap, withChecks } from './demo-checks.ts';

type Planned = { readonly built: BuiltDay; readonly schedule: Schedule };

/**
 * What the crew would have tapped up to `now` if it followed the schedule the way people do: a
 * little after the time, a little faster or slower, never before what must come first, and every
 * check in its time. A function of the plan and the seed alone.
 */
export function demoLog(plan: DemoPlan, { now, seed }: { now: Instant; seed: number }): DemoTap[] {
  const random = seeded(seed);
  const taps = [...handTaps(plan, random), ...airReadings(plan, random)];
  const done = taps.filter(({ at }) => at <= now).sort((a, b) => a.at - b.at);
  return withChecks(plan, done, { now, seed });
}

type Passage = { readonly startS: number; readonly endS: number };

function handTaps({ built, schedule }: Planned, random: Random): DemoTap[] {
  const activities = new Map(built.problem.activities.map((each) => [each.id, each]));
  const passages = new Map<string, Passage>();
  const freeS = new Map<PersonId, number>();
  const inOrder = [...schedule.placements].sort((a, b) => a.startS - b.startS || a.endS - b.endS);
  return inOrder.flatMap((placement) => {
    const activity = activities.get(placement.activity);
    const mode = activity?.modes.find(({ id }) => id === placement.mode);
    if (!activity || !mode) return [];
    const people = peopleOf(placement);
    const readyS = readyAt(activity, built, passages);
    const isFree = people.map((person) => freeS.get(person) ?? 0);
    const dawdleS = people.length > 0 ? 60 * random() : 0;
    const startS = Math.round(Math.max(placement.startS + dawdleS, readyS, ...isFree));
    const endS = Math.round(startS + lengthOf(placement, mode, random));
    passages.set(activity.id, { startS, endS });
    for (const person of people) freeS.set(person, endS);
    return tapsOf(placement, { startS, endS }, people[0], built);
  });
}

function tapsOf(
  { activity: task }: Placement,
  { startS, endS }: Passage,
  person: PersonId | undefined,
  { origin }: BuiltDay,
): DemoTap[] {
  if (person === undefined) return [];
  const at = (timeS: number) => after(origin, seconds(timeS));
  return [
    { at: at(startS), intent: { kind: 'start', task }, personId: person },
    { at: at(endS), intent: { kind: 'finish', task }, personId: person },
  ];
}

const peopleOf = ({ uses }: Placement): PersonId[] =>
  uses.flatMap(({ resource }) => {
    const thing = kitchenResource(resource);
    return thing.kind === 'hand' ? [thing.person] : [];
  });

/** The earliest start that all which must come before leaves. */
function readyAt(
  { id }: Activity,
  { problem }: BuiltDay,
  passages: ReadonlyMap<string, Passage>,
): number {
  const times = problem.lags.flatMap(({ from, to, minS }) => {
    const before = passages.get(from.activity);
    const binds = to.activity === id && to.end === 'start' && minS !== undefined;
    return binds && before ? [before[`${from.end}S`] + minS] : [];
  });
  return Math.max(0, ...times);
}

/**
 * Practised hands are rather faster than planned; a fire keeps its own time; a wait need not last
 * longer than it must.
 */
function lengthOf({ startS, endS }: Placement, { length }: Mode, random: Random): Seconds {
  if (length.kind === 'wait') return length.minS;
  const isFire = endS - startS > 1800;
  const factor = isFire ? 0.97 + 0.05 * random() : 0.9 + 0.12 * random();
  return seconds((endS - startS) * factor);
}

const BETWEEN_READINGS_S = 1800;

/**
 * The air of each smoker that has something in it, every half hour, a few degrees about its set
 * temperature.
 */
function airReadings({ built, schedule }: Planned, random: Random): DemoTap[] {
  return [...fires({ built, schedule })].flatMap(([smoker, stays]) => {
    const startS = Math.min(...stays.map((stay) => stay.startS));
    const endS = Math.max(...stays.map((stay) => stay.endS));
    const count = Math.floor((endS - startS) / BETWEEN_READINGS_S);
    const times = Array.from({ length: count }, (_, n) => startS + (n + 1) * BETWEEN_READINGS_S);
    return times.flatMap((timeS): DemoTap[] => {
      const stay = stays.find((each) => each.startS <= timeS && timeS < each.endS);
      if (stay === undefined) return [];
      const tempC = celsius(Math.round((stay.setC + 8 * random() - 4) * 10) / 10);
      const at = after(built.origin, seconds(timeS));
      return [
        { at, intent: { kind: 'reading', where: { kind: 'air', smoker }, tempC }, personId: null },
      ];
    });
  });
}

type Stay = Passage & { readonly setC: Celsius };

function fires({ built, schedule }: Planned): Map<SmokerId, Stay[]> {
  const stays = new Map<SmokerId, Stay[]>();
  const activities = new Map(built.problem.activities.map((each) => [each.id, each]));
  for (const { activity, mode, startS, endS } of schedule.placements) {
    const modes = activities.get(activity)?.modes ?? [];
    for (const { resource, state } of modes.find(({ id }) => id === mode)?.states ?? []) {
      const thing = kitchenResource(resource);
      if (thing.kind !== 'fire') continue;
      const stay = { startS, endS, setC: fireOf(state) };
      stays.set(thing.smoker, [...(stays.get(thing.smoker) ?? []), stay]);
    }
  }
  return stays;
}
