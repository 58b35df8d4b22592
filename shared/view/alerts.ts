import type { CheckKind, Live, OpenCheck } from '../day/index.ts';
import { currentHand, loadsOf, openChecks, passagesOf, spellOf } from '../day/index.ts';
import type {
  BatchId,
  Instant,
  PersonId,
  SmokerId,
  StationId,
  TaskId,
  Text,
} from '../kernel/index.ts';
import { after, instant, minutes } from '../kernel/index.ts';
import { checkedThing } from './check-on.ts';
import { peopleOf } from './people.ts';

/**
 * What does not go as it should and needs a hand: who, what, and by when. What lacks one of them is
 * no alert (ISA-18.2, as told second-hand: an alarm asks for a response). Work that is due in its
 * turn is none either: its line says so.
 */
export type Alert = {
  /** Of this one thing. */
  readonly key: string;
  /** What it comes from: all that comes from one thing is one alert to a person. */
  readonly cause: string;
  readonly who: PersonId;
  readonly name: string;
  readonly asks: Asks;
  readonly byAt: Instant;
};

type Asks =
  | { readonly kind: 'check'; readonly check: CheckKind; readonly thing: Text }
  | { readonly kind: 'correct'; readonly check: CheckKind; readonly thing: Text }
  | { readonly kind: 'help'; readonly whom: string | null; readonly task: Text }
  | { readonly kind: 'down' | 'cold'; readonly smoker: Text }
  | { readonly kind: 'late'; readonly service: Text; readonly task: Text };

type Found = Omit<Alert, 'who' | 'name'> & { readonly who: PersonId | null };

/** Help that is asked for is wanted within this time; common practice, no source. */
const HELP_S = minutes(5);
/** A fire that is out is looked after within this time; common practice, no source. */
const FIRE_S = minutes(15);
/** So long before a check is missed somebody is told (judged). */
const AHEAD_S = minutes(5);
/** For a service that will be later than this somebody is called; it counts as late before. */
const CALLED_LATE_S = 120;

/** All that needs a hand now, in the order of its times; none where nobody is there to do it. */
export function alertsIn(live: Live): Alert[] {
  const ill = illBatches(live);
  const found = [...fires(live), ...calls(live), ...checks(live, ill), ...lateServices(live, ill)];
  return named(live, found);
}

/** Who is called to a fire, and by when; null where it burns, or nobody is there. */
export function fireCall(
  live: Live,
  smoker: SmokerId,
): Pick<Alert, 'who' | 'name' | 'byAt'> | null {
  if (!spellOf(live.state, smoker)) return null;
  return named(live, fires(live, smoker))[0] ?? null;
}

/** Whose turn it is at the pit, for what is asked of it and is no alert. */
export function pitHand(live: Live): string | null {
  const who = handAt(live, pitsOf(live));
  const here = peopleOf(live).filter(({ onShift, isOut }) => onShift && !isOut);
  return (here.find(({ id }) => id === who) ?? here[0])?.name ?? null;
}

const pitsOf = ({ index }: Live) =>
  new Set(index.plan.kitchen.stations.filter(({ pit }) => pit).map(({ id }) => id));

function named(live: Live, found: readonly Found[]): Alert[] {
  const here = peopleOf(live).filter(({ onShift, isOut }) => onShift && !isOut);
  const nameOf = new Map(here.map(({ id, name }) => [id, name]));
  return found
    .flatMap(({ who, ...rest }): Alert[] => {
      // Whoever it would fall to may be out: then it falls to whoever is there.
      const id = who !== null && nameOf.has(who) ? who : here[0]?.id;
      const name = id && nameOf.get(id);
      return id && name ? [{ ...rest, who: id, name }] : [];
    })
    .sort((a, b) => a.byAt - b.byAt || (a.key < b.key ? -1 : 1));
}

function fires(live: Live, only?: SmokerId): Found[] {
  const { kitchen } = live.index.plan;
  const pits = pitsOf(live);
  return kitchen.smokers.flatMap(({ id, name }): Found[] => {
    const spell = only === undefined || id === only ? spellOf(live.state, id) : null;
    if (!spell) return [];
    const cause = `smoker ${id}`;
    const byAt = spell.backAt ?? after(spell.from, FIRE_S);
    const who = handAt(live, pits);
    return [{ key: cause, cause, who, asks: { kind: spell.kind, smoker: name }, byAt }];
  });
}

function calls(live: Live): Found[] {
  const { state, index } = live;
  return [...state.tasks].flatMap(([id, { helpAskedAt, finished }]): Found[] => {
    const task = index.tasks.get(id);
    if (helpAskedAt === null || finished || !task) return [];
    const whom = currentHand(state, index, id);
    const name = index.plan.kitchen.crew.find((each) => each.id === whom)?.name ?? null;
    const asks = { kind: 'help', whom: name, task: task.title } as const;
    const key = `help ${id}`;
    return [{ key, cause: key, who: freeHand(live, whom), asks, byAt: after(helpAskedAt, HELP_S) }];
  });
}

function checks(live: Live, ill: ReadonlyMap<BatchId, string>): Found[] {
  return openChecks(live.state).flatMap((check): Found[] => {
    const isNear = check.dueAt <= live.now && check.lateAt <= live.now + AHEAD_S * 1000;
    if (!check.failed && !isNear) return [];
    const kind = check.failed ? 'correct' : 'check';
    const asks = { kind, check: check.on.kind, thing: checkedThing(live, check.on) } as const;
    const key = `check ${check.key}`;
    const cause = ('batch' in check.on && ill.get(check.on.batch)) || roundOf(check);
    return [{ key, cause, who: handAt(live, new Set([check.station])), asks, byAt: check.lateAt }];
  });
}

/** What is looked at of one kind at one station is looked at in one go. */
const roundOf = ({ on, station }: OpenCheck) => `checks ${on.kind} ${station}`;

function lateServices(live: Live, ill: ReadonlyMap<BatchId, string>): Found[] {
  const { index, state } = live;
  return index.plan.built.services.flatMap(({ id, name, opensAt }): Found[] => {
    const { inHandS = 0, hangsOn = null } = live.outlookOf(id) ?? {};
    const task = hangsOn && index.tasks.get(hangsOn);
    if (inHandS >= -CALLED_LATE_S || !task) return [];
    const who = currentHand(state, index, task.id) ?? handAt(live, new Set([task.station]));
    const asks = { kind: 'late', service: name, task: task.title } as const;
    const cause = ill.get(task.batch) ?? `service ${id}`;
    return [{ key: `late ${id}`, cause, who, asks, byAt: opensAt }];
  });
}

/** What lies in a smoker that is down or cold, with the cause that all its troubles have. */
function illBatches(live: Live): Map<BatchId, string> {
  const { state, index } = live;
  const passages = passagesOf(state);
  const ill = new Map<BatchId, string>();
  for (const { id, batch, work } of index.plan.built.tasks) {
    const passage = passages.get(id);
    const isThere = work === 'place' && passage?.startedAt != null && passage.finishedAt === null;
    if (!isThere) continue;
    for (const { slot } of loadsOf(state, index, id)) {
      const smoker = index.plan.kitchen.smokers.find(({ racks }) =>
        racks.some((rack) => rack.slot === slot),
      );
      if (smoker && spellOf(state, smoker.id)) ill.set(batch, `smoker ${smoker.id}`);
    }
  }
  return ill;
}

type Work = {
  readonly id: TaskId;
  readonly hand: PersonId;
  readonly runs: boolean;
  startS: number;
};

/** The work of hands that is not done, what runs first, then by its time. */
function workIn(live: Live): Work[] {
  const passages = passagesOf(live.state);
  return live.index.plan.built.tasks
    .flatMap(({ id, work }): Work[] => {
      const hand = work === 'hands' ? currentHand(live.state, live.index, id) : null;
      const passage = passages.get(id);
      if (hand === null || passage?.finishedAt != null) return [];
      return [{ id, hand, runs: passage?.startedAt != null, startS: live.timesOf(id).startS }];
    })
    .sort((a, b) => Number(b.runs) - Number(a.runs) || a.startS - b.startS);
}

/** Who works at one of these stations, or will be there first. */
function handAt(live: Live, stations: ReadonlySet<StationId>): PersonId | null {
  const isThere = ({ id }: Work) => {
    const station = live.index.tasks.get(id)?.station;
    return station !== undefined && stations.has(station);
  };
  return workIn(live).find(isThere)?.hand ?? null;
}

/** Whoever else is here and has nothing under way, or else the longest time before the next. */
function freeHand(live: Live, not: PersonId | null): PersonId | null {
  const work = workIn(live);
  const busyFrom = (id: PersonId) => {
    const next = work.find(({ hand }) => hand === id);
    if (!next) return instant(Number.MAX_SAFE_INTEGER);
    return next.runs ? instant(0) : live.instantOf(live.timesOf(next.id).startS);
  };
  const [free] = peopleOf(live)
    .filter(({ id, onShift, isOut }) => onShift && !isOut && id !== not)
    .sort((a, b) => busyFrom(b.id) - busyFrom(a.id));
  return free?.id ?? null;
}
