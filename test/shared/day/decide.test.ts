import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { factsOf, fold, passagesOf } from '../../../shared/day/index.ts';
import {
  after,
  celsius,
  minutes,
  must,
  type PersonId,
  type ScreenId,
} from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling, task } from './demo.ts';

const first = must(handsInOrder[0], 'a task');
const at = after(plan.built.origin, minutes(600));
const later = after(at, minutes(5));

const refusedRule = (telling: Telling, intent: Intent, when = at) => {
  const decision = telling.ask(intent, when);
  return decision.ok ? 'taken' : decision.refusal.rule;
};

describe('a tap', () => {
  it('starts a task, and the next one finishes it', () => {
    const telling = new Telling();
    telling.ask({ kind: 'start', task: first }, at);
    telling.ask({ kind: 'finish', task: first }, later);
    const { started, finished } = factsOf(telling.state, first);
    expect([started?.at, finished?.at]).toEqual([at, later]);
  });

  it('names who does the work: whoever is named, else whom the schedule has', () => {
    const telling = new Telling();
    telling.ask({ kind: 'start', task: first }, at);
    const scheduled = factsOf(telling.state, first).hand;
    expect(plan.kitchen.crew.map(({ id }) => id)).toContain(scheduled);
    const someone = must(
      plan.kitchen.crew.find(({ id }) => id !== scheduled),
      'another hand',
    ).id;
    telling.ask({ kind: 'takeBack', task: first }, at);
    telling.ask({ kind: 'start', task: first }, later, someone);
    expect(factsOf(telling.state, first).hand).toBe(someone);
  });

  it('is refused on a task that is done, with who did it and when', () => {
    const telling = new Telling();
    const person = must(plan.kitchen.crew[0], 'a hand').id;
    telling.ask({ kind: 'start', task: first }, at, person);
    telling.ask({ kind: 'finish', task: first }, later, person);
    const again = telling.ask({ kind: 'finish', task: first }, later);
    expect(again).toMatchObject({
      ok: false,
      refusal: { rule: 'already-done', at: later, by: { id: person } },
    });
  });

  it('is refused with the screen where it was done, when nobody there said who they are', () => {
    const telling = new Telling();
    const screen = 'screen-1' as ScreenId;
    const place = { role: 'pit', stations: [] } as const;
    telling.keep({ kind: 'screenPaired', screen, name: 'Pit wall', place }, at, null);
    telling.ask({ kind: 'start', task: first }, at);
    const done = telling.keep({ kind: 'taskFinished', task: first }, later, null);
    telling.state = fold(telling.state, { ...done, seq: done.seq + 1, screenId: screen });
    expect(telling.ask({ kind: 'finish', task: first }, later)).toEqual({
      ok: false,
      refusal: { rule: 'already-done', at: later, by: null, on: 'Pit wall' },
    });
  });

  it('is refused while other hands must come first, and says which work', () => {
    const telling = new Telling();
    const batch = must(plan.built.batches[0], 'a batch').id;
    const load = telling.ask({ kind: 'start', task: task(batch, 'load') }, at);
    expect(load).toMatchObject({ ok: false, refusal: { rule: 'waits-for' } });
  });

  it('is refused on what no hand does, on a task that is gone, and before the start', () => {
    const telling = new Telling();
    const smoke = must(
      plan.built.tasks.find(({ work }) => work === 'fire'),
      'a fire',
    ).id;
    expect(refusedRule(telling, { kind: 'start', task: smoke })).toBe('not-by-hand');
    const gone = 'no-batch/no-step' as typeof first;
    expect(refusedRule(telling, { kind: 'start', task: gone })).toBe('unknown-task');
    expect(refusedRule(telling, { kind: 'finish', task: first })).toBe('not-started');
  });

  it('can be taken back, finish first and then start, until what follows has begun', () => {
    const telling = new Telling();
    telling.ask({ kind: 'start', task: first }, at);
    telling.ask({ kind: 'finish', task: first }, later);
    telling.ask({ kind: 'takeBack', task: first }, later);
    expect(factsOf(telling.state, first).finished).toBeNull();
    telling.ask({ kind: 'takeBack', task: first }, later);
    expect(factsOf(telling.state, first).started).toBeNull();
    expect(refusedRule(telling, { kind: 'takeBack', task: first })).toBe('not-started');
  });
});

describe('a count', () => {
  it('replaces the last, starts what nobody tapped, and stays within the pieces', () => {
    const telling = new Telling();
    telling.ask({ kind: 'count', task: first, done: 2 }, at);
    telling.ask({ kind: 'count', task: first, done: 3 }, later);
    const { started, counted } = factsOf(telling.state, first);
    expect([started?.at, counted?.done]).toEqual([at, 3]);
    const tooMany: Intent = { kind: 'count', task: first, done: 1000 };
    expect(refusedRule(telling, tooMany)).toBe('count-out-of-range');
  });
});

describe('late, help and giving to', () => {
  it('adds up what a hand says it runs late, within reason', () => {
    const telling = new Telling();
    telling.ask({ kind: 'start', task: first }, at);
    telling.ask({ kind: 'late', task: first, byS: minutes(5) }, at);
    telling.ask({ kind: 'late', task: first, byS: minutes(10) }, at);
    expect(factsOf(telling.state, first).lateByS).toBe(minutes(15));
    const forever: Intent = { kind: 'late', task: first, byS: minutes(1000) };
    expect(refusedRule(telling, forever)).toBe('late-out-of-range');
  });

  it('asks for help until help came, or the work is done', () => {
    const telling = new Telling();
    telling.ask({ kind: 'needHelp', task: first }, at);
    expect(factsOf(telling.state, first).helpAskedAt).toBe(at);
    telling.ask({ kind: 'helpCame', task: first }, later);
    expect(factsOf(telling.state, first).helpAskedAt).toBeNull();
  });

  it('gives work only to somebody on the crew who has been shown it', () => {
    const telling = new Telling();
    const skilled = task(must(plan.built.batches[0], 'a batch').id, 'load');
    const stranger: Intent = { kind: 'giveTo', task: skilled, hand: 'nobody' as PersonId };
    expect(refusedRule(telling, stranger)).toBe('unknown-person');
    const outcomes = plan.kitchen.crew.map(({ id }) =>
      refusedRule(telling, { kind: 'giveTo', task: skilled, hand: id }),
    );
    expect(new Set(outcomes)).toEqual(new Set(['taken', 'lacks-skill']));
  });
});

describe('a reading', () => {
  it('is kept as it was taken, and refused where no thermometer could show it', () => {
    const telling = new Telling();
    const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;
    const air = { kind: 'air', smoker } as const;
    telling.ask({ kind: 'reading', where: air, tempC: celsius(107) }, at);
    expect(telling.state.readings.at(-1)?.tempC).toBe(107);
    const hot: Intent = { kind: 'reading', where: air, tempC: celsius(900) };
    expect(refusedRule(telling, hot)).toBe('impossible-temperature');
    const core = { kind: 'core', stay: first } as const;
    const nowhere: Intent = { kind: 'reading', where: core, tempC: celsius(60) };
    expect(refusedRule(telling, nowhere)).toBe('unknown-place');
  });
});

describe('what nobody taps', () => {
  it('begins when the hands before it are done and ends when the hands after it begin', () => {
    const telling = new Telling();
    const batch = must(
      plan.built.batches.find(({ id }) => id.includes('ribs')),
      'ribs',
    ).id;
    const steps = handsInOrder.filter((id) => id.startsWith(`${batch}/`));
    let when = at;
    for (const id of steps) {
      telling.ask({ kind: 'start', task: id }, when);
      when = after(when, minutes(3));
      telling.ask({ kind: 'finish', task: id }, when);
      when = after(when, minutes(20));
    }
    const passages = passagesOf(telling.state);
    const rub = passages.get(task(batch, 'rub'));
    const setting = must(
      plan.built.tasks.find((each) => each.batch === batch && each.step.startsWith('set')),
      'a set',
    ).id;
    const set = passages.get(setting);
    const load = passages.get(task(batch, 'load'));
    expect(set).toEqual({ startedAt: rub?.finishedAt, finishedAt: load?.startedAt });
    const stay = passages.get(task(batch, 'stay'));
    const off = passages.get(task(batch, 'off'));
    expect(stay).toEqual({ startedAt: load?.startedAt, finishedAt: off?.finishedAt });
  });
});
