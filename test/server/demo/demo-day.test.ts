import { describe, expect, it } from 'vitest';
import { makePlan } from '../../../server/adopt.ts';
import { demoDay, demoLog } from '../../../server/demo/index.ts';
import { decide, EVENT_VERSION, type Event, emptyDay, fold } from '../../../shared/day/index.ts';
import type { CommandId, DayId, Instant } from '../../../shared/kernel/index.ts';
import { instant, must, resolveLocal } from '../../../shared/kernel/index.ts';
import { check } from '../../../shared/schedule/index.ts';

const HOUR_MS = 3_600_000;
const at = (day: string, time: string, zone: string) => resolveLocal(day, time, zone).at;

function plannedAt(now: Instant, zone: string) {
  const files = demoDay(now, zone);
  const made = makePlan(files, 1);
  const { built, schedule } = must(made.ok ? made.plan : null, JSON.stringify(made));
  return { files, built, schedule };
}

/** Each hour of an ordinary day, and of the nights when the clocks of two zones change. */
const moments = [
  ['2026-06-05', 'America/Chicago'],
  ['2026-03-08', 'America/Chicago'],
  ['2026-11-01', 'America/Chicago'],
  ['2026-03-29', 'Europe/London'],
  ['2026-10-25', 'Europe/London'],
] as const;

describe('the demo day', () => {
  it.each(moments)('can be planned at any hour of %s in %s, and is late nowhere', (day, zone) => {
    const midnight = at(day, '00:00', zone);
    for (let hour = 0; hour < 25; hour += 3.5) {
      const now = instant(midnight + hour * HOUR_MS);
      const { built, schedule } = plannedAt(now, zone);
      expect(check(built.problem, schedule)).toEqual([]);
      const starts = new Map(schedule.placements.map(({ activity, startS }) => [activity, startS]));
      for (const goal of built.problem.goals) {
        expect(starts.get(goal.activity)).toBeLessThanOrEqual(goal.dueS);
      }
      const dinner = must(built.services[1], 'dinner');
      const aheadH = (dinner.opensAt - now) / HOUR_MS;
      // Where the clock doubles an hour, dinner may be put off to the end of it.
      expect(aheadH).toBeGreaterThan(4.7);
      expect(aheadH).toBeLessThanOrEqual(6);
    }
  });

  const now = instant(at('2026-06-05', '08:07', 'America/Chicago'));
  const planned = plannedAt(now, 'America/Chicago');
  const nowS = (now - planned.built.origin) / 1000;
  const running = planned.schedule.placements
    .filter(({ startS, endS }) => startS <= nowS && nowS < endS)
    .map(({ activity }) => activity);

  it('has hands at the raw table for dinner, and shoulders that went on hours ago', () => {
    const { tasks } = planned.built;
    const atTable = tasks.filter(({ station, work }) => station === 'trim' && work === 'hands');
    const beingDone = atTable.filter(({ id }) => running.includes(id));
    expect(beingDone.map(({ batch }) => batch.split('-')[0])).toContain('dinner');
    const shoulders = planned.schedule.placements.filter(
      ({ activity, startS }) =>
        /shoulder-\d\/stay(-\d+)?$/.test(activity) && startS < nowS - 3 * 3600,
    );
    expect(shoulders.length).toBeGreaterThan(1);
  });

  it('names at each step what is in the hand there: a brisket before it is parted', () => {
    const { tasks, batches } = planned.built;
    const parted = tasks.find(({ step }) => step === 'part')?.batch;
    const named = (step: string) =>
      tasks.find((task) => task.batch === parted && task.step === step)?.piece.many.en;
    expect(batches.map(({ id }) => id)).toContain(parted);
    expect(['pull', 'part', 'load'].map(named)).toEqual(['briskets', 'briskets', 'flats']);
    expect(tasks.filter(({ step }) => step === 'grind').map(({ byWeight }) => byWeight)).toContain(
      true,
    );
  });

  it('keeps every smoker busy, each with its heat from another side', () => {
    const stays = planned.schedule.placements.filter(({ activity }) => /\/stay/.test(activity));
    expect(new Set(stays.map(({ mode }) => mode.split('/')[0]))).toEqual(new Set(['a', 'b', 'c']));
    const heats = planned.files.kitchen.smokers.map(({ heat }) => heat);
    expect(new Set(heats).size).toBe(3);
  });
});

describe('the demo log', () => {
  const now = instant(at('2026-06-05', '08:07', 'America/Chicago'));
  const planned = plannedAt(now, 'America/Chicago');
  const { files, built, schedule } = planned;
  const whole = { ...files, built, schedule };
  const taps = demoLog(whole, { now, seed: 7 });

  it('is the same for the same seed, and another for another', () => {
    expect(demoLog(whole, { now, seed: 7 })).toEqual(taps);
    expect(demoLog(whole, { now, seed: 8 })).not.toEqual(taps);
  });

  it('ends now, and a later one begins with all of it', () => {
    expect(taps.every(({ at: tapped }) => tapped <= now)).toBe(true);
    const later = demoLog(whole, { now: instant(now + HOUR_MS), seed: 7 });
    expect(later.length).toBeGreaterThan(taps.length);
    expect(later.slice(0, taps.length)).toEqual(taps);
  });

  it('never has one person at two tasks at once', () => {
    const busy = new Map<string, string>();
    for (const { intent, personId } of taps) {
      if (personId === null || !('task' in intent) || intent.task === null) continue;
      if (intent.kind === 'start') {
        expect(busy.has(personId)).toBe(false);
        busy.set(personId, intent.task);
      } else {
        expect(busy.get(personId)).toBe(intent.task);
        busy.delete(personId);
      }
    }
  });

  it('holds nothing that the day would refuse', () => {
    const hashes = { cookPlan: '', kitchen: '', catalogue: '' };
    const plan = { version: 1, engine: 'test', seed: 1, hashes, ...whole };
    let seq = 0;
    let state = emptyDay();
    const happen = (fact: object, when: Instant, personId: string | null) => {
      seq += 1;
      const head = {
        seq,
        version: EVENT_VERSION,
        day: built.day as DayId,
        commandId: `c${seq}`,
        screenId: null,
      };
      state = fold(state, { ...head, at: when, keptAt: when, personId, ...fact } as Event);
    };
    happen({ kind: 'planAdopted', plan }, built.origin, null);
    for (const { at: tappedAt, intent, personId } of taps) {
      const head = { id: `c${seq}` as CommandId, personId, screenId: null, tappedAt };
      const decision = decide(state, { ...head, ...intent }, tappedAt);
      expect(decision).toMatchObject({ ok: true });
      if (decision.ok) for (const fact of decision.facts) happen(fact, tappedAt, personId);
    }
    expect(seq).toBeGreaterThan(150);
  });
});
