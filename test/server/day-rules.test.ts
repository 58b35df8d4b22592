import { beforeAll, describe, expect, it } from 'vitest';
import { adoption, makePlan } from '../../server/adopt.ts';
import { dayRules } from '../../server/day-rules.ts';
import { demoDay } from '../../server/demo/index.ts';
import {
  type Command,
  type DayState,
  EVENT_VERSION,
  type Event,
  type Intent,
} from '../../shared/day/index.ts';
import {
  type CommandId,
  celsius,
  type DayId,
  type Instant,
  instant,
  must,
  type ScreenId,
  type SmokerId,
  type StationId,
  type TaskId,
} from '../../shared/kernel/index.ts';
import type { Face } from '../../shared/view/index.ts';

const NOON = instant(Date.UTC(2026, 10, 25, 12));
const smoker: Face = { kind: 'smoker' };
const station = (id: StationId): Face => ({ kind: 'station', station: id });
const at = (face: Face) => ({ screenId: 'screen-1' as ScreenId, face });
const atStation = (id: StationId) => at(station(id));

let state: DayState;
beforeAll(() => {
  const made = makePlan(demoDay(NOON, 'UTC'), 1);
  const { facts } = adoption(must(made.ok ? made.plan : null, 'a plan'), NOON);
  state = dayRules.fold(dayRules.empty(), eventOf(1, must(facts[0], 'a fact'), NOON));
});

function eventOf(seq: number, fact: Parameters<typeof dayRules.dayOf>[1], at: Instant): Event {
  const day = '2026-11-25' as DayId;
  const commandId = `c${seq}` as CommandId;
  const who = { personId: null, screenId: null };
  return { ...fact, seq, version: EVENT_VERSION, day, at, keptAt: at, commandId, ...who };
}

function command(intent: Intent): Command {
  const head = { id: 'c' as CommandId, personId: null, screenId: null, tappedAt: NOON };
  return { ...head, ...intent };
}

const plan = () => must(state.plan, 'a plan');
const taskAt = (at: StationId): TaskId =>
  must(
    plan().built.tasks.find(({ station: its, work }) => its === at && work === 'hands'),
    `work at ${at}`,
  ).id;
const workAt = (isPit: boolean) =>
  plan()
    .kitchen.stations.filter(({ pit }) => pit === isPit)
    .map(({ id }) => id)
    .filter((id) => plan().built.tasks.some(({ station: at }) => at === id));

describe('a wall', () => {
  it('may ask for the work that it shows, and for no other', () => {
    const [here, there] = workAt(false);
    const mine = command({ kind: 'start', task: taskAt(must(here, 'a station')) });
    const theirs = command({ kind: 'start', task: taskAt(must(there, 'another')) });
    const face = station(must(here, 'a station'));
    expect(dayRules.mayAsk(state, at(face), mine)).toBeNull();
    expect(dayRules.mayAsk(state, at(face), theirs)).toEqual({ rule: 'not-this-screens' });
    expect(dayRules.mayAsk(state, at(smoker), theirs)).toEqual({ rule: 'not-this-screens' });
  });

  it('of several stations shows the work of all of them by its time, and may ask for it', () => {
    const [here, there, ...others] = workAt(false);
    const both = [must(here, 'a station'), must(there, 'another')] as const;
    const face: Face = { kind: 'station', station: both[0], beside: [both[1]] };
    for (const id of both) {
      const begin = command({ kind: 'start', task: taskAt(id) });
      expect(dayRules.mayAsk(state, at(face), begin)).toBeNull();
    }
    const theirs = command({ kind: 'start', task: taskAt(must(others[0], 'a third')) });
    expect(dayRules.mayAsk(state, at(face), theirs)).toEqual({ rule: 'not-this-screens' });
    const shown = dayRules.run(state, NOON).show(face, NOON);
    const view = must(shown.ok && shown.view.face === 'station' ? shown.view : null, 'a wall');
    expect(view.stations.map(({ id }) => id)).toEqual(both);
    const stations = view.tasks.map(
      ({ id }) => plan().built.tasks.find((t) => t.id === id)?.station,
    );
    expect(new Set(stations)).toEqual(new Set(both));
    const starts = view.tasks.map(({ startAt }) => startAt);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    const nowhere: Face = { ...face, beside: ['nowhere' as StationId] };
    expect(dayRules.run(state, NOON).show(nowhere, NOON).ok).toBe(false);
  });

  it('touches loads and fires only where the pit is', () => {
    const [table] = workAt(false);
    const [pit] = workAt(true);
    const where = { kind: 'air', smoker: 'a' as SmokerId } as const;
    const reading = command({ kind: 'reading', where, tempC: celsius(110) });
    const move = command({ kind: 'moveSlots', moves: [], basedOnSeq: 1 });
    const begin = command({ kind: 'start', task: taskAt(must(pit, 'a pit')) });
    for (const asked of [reading, move, begin]) {
      expect(dayRules.mayAsk(state, at(smoker), asked)).toBeNull();
      expect(dayRules.mayAsk(state, atStation(must(pit, 'a pit')), asked)).toBeNull();
      expect(dayRules.mayAsk(state, atStation(must(table, 'a table')), asked)).toEqual({
        rule: 'not-this-screens',
      });
    }
  });

  it('leaves it to the day to refuse work that is gone', () => {
    const gone = command({ kind: 'start', task: 'gone' as TaskId });
    expect(dayRules.mayAsk(state, at(smoker), gone)).toBeNull();
  });

  it('shows its face, or says why there is none', () => {
    const day = dayRules.run(state, NOON);
    expect(day.show(smoker, NOON).ok).toBe(true);
    expect(day.show(station('nowhere' as StationId), NOON)).toEqual({
      ok: false,
      refusal: { rule: 'unknown-place' },
    });
    expect(dayRules.run(dayRules.empty(), NOON).show(smoker, NOON)).toEqual({
      ok: false,
      refusal: { rule: 'no-plan' },
    });
  });
});

describe('a tap', () => {
  it('cannot be older than the plan, nor than what happened to its task last', () => {
    const [table] = workAt(false);
    const task = taskAt(must(table, 'a table'));
    const finish = command({ kind: 'finish', task });
    expect(dayRules.changedAt(state, finish)).toBe(plan().built.origin);
    const startedAt = instant(NOON + 60_000);
    const started = eventOf(2, { kind: 'taskStarted', task, hand: null }, startedAt);
    expect(dayRules.changedAt(dayRules.fold(state, started), finish)).toBe(startedAt);
  });
});
