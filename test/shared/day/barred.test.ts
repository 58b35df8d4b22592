import { describe, expect, it } from 'vitest';
import type { CheckOn } from '../../../shared/day/index.ts';
import { barsOf, loadsOf, openChecks, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { BatchId, Instant, SlotId, TaskId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, minutes, must } from '../../../shared/kernel/index.ts';
import { passLine, viewOf } from '../../../shared/view/index.ts';
import { leftInPans } from '../../../shared/view/pass-page.ts';
import { sayRefusal } from '../../../shared/words/index.ts';
import { noon, plan, Telling, task } from './demo.ts';
import { atNoon } from './demo-noon.ts';

const at = (min: number): Instant => after(noon, minutes(min));
const by = must(plan.kitchen.crew[0], 'somebody').id;
const beans = 'lunch-beans-1' as BatchId;
const ribs = 'lunch-ribs-2' as BatchId;
const hot = (batch: BatchId): CheckOn => ({ kind: 'hot-hold', batch });
const check = (on: CheckOn, tempC: number) => ({
  kind: 'check' as const,
  on,
  tempC: celsius(tempC),
  thermometer: null,
});
const say = {
  language: 'en',
  zone: plan.built.zone,
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
} as const;

function readyOf(day: Telling, min: number, dish: string): number {
  const view = viewOf(openLive(day.state, at(min)), { kind: 'pass' });
  if (view.face !== 'pass' || !view.service) throw new Error('no service');
  const found = must(
    view.dishes.find((each) => each.dish === dish),
    dish,
  );
  return passLine(found, view.service, at(min)).ready;
}

describe('what was found too cold', () => {
  it('is not counted ready, nor sold, till somebody says what was done about it', () => {
    const day = atNoon();
    const { dish, service } = must(
      plan.built.batches.find(({ id }) => id === beans),
      beans,
    );
    const before = readyOf(day, 0, dish);
    expect(before).toBeGreaterThan(0);
    // 131 °F, where 3-501.16(A)(1) asks for 135 (secondary copy).
    day.ask(check(hot(beans), 55), at(1), by);
    expect(readyOf(day, 1, dish)).toBe(0);
    const refused = day.ask({ kind: 'sold', service, dish, sold: 1 }, at(2));
    expect(refused).toMatchObject({ refusal: { rule: 'barred', check: 'hot-hold' } });
  });

  it('stays barred by a better reading alone, and while it is reheated, till that is read', () => {
    const day = atNoon();
    const isBarred = (min: number) => barsOf(day.state, at(min)).has(beans);
    day.ask(check(hot(beans), 55), at(1), by);
    day.ask(check(hot(beans), 70), at(2), by);
    expect(isBarred(2)).toBe(true);
    day.ask({ kind: 'correct', on: hot(beans), action: 'reheat-at-once' }, at(3), by);
    expect(isBarred(3)).toBe(true);
    // 165 °F for 15 s within two hours, 3-403.11(A), (D) (secondary copy).
    const reheat: CheckOn = { kind: 'reheat', batch: beans };
    day.ask(check(reheat, 74), at(60), by);
    expect(isBarred(60)).toBe(false);
  });

  it('is barred again where the reheating took longer than two hours', () => {
    const day = atNoon();
    day.ask(check(hot(beans), 55), at(1), by);
    day.ask({ kind: 'correct', on: hot(beans), action: 'reheat-at-once' }, at(3), by);
    day.ask(check({ kind: 'reheat', batch: beans }, 80), at(125), by);
    const bar = must(barsOf(day.state, at(125)).get(beans), 'a bar');
    expect(bar).toMatchObject({ why: 'failed', check: { on: { kind: 'reheat' } } });
    expect(bar.check.failed?.breach.asked).toBe('2 h');
  });

  it('takes its portions from the pass when it is thrown out, and nothing of it is begun', () => {
    const day = atNoon();
    day.ask(check(hot(ribs), 50), at(1), by);
    const cut = task(ribs, 'cut');
    const refused = day.ask({ kind: 'start', task: cut }, at(2), by);
    expect(refused).toMatchObject({ refusal: { rule: 'barred', why: 'failed' } });
    day.ask({ kind: 'correct', on: hot(ribs), action: 'discard' }, at(3), by);
    const view = viewOf(openLive(day.state, at(3)), { kind: 'pass' });
    const pans = view.face === 'pass' ? view.dishes.flatMap((dish) => leftInPans(dish)) : [];
    expect(pans.some(({ pan }) => pan.batch === ribs)).toBe(false);
    expect(day.ask({ kind: 'start', task: cut }, at(4), by)).toMatchObject({
      refusal: { rule: 'barred', why: 'discarded' },
    });
  });
});

describe('what nobody looked at', () => {
  it('is barred from the moment it is late, and free again once it is found hot', () => {
    const day = atNoon();
    const isBarred = (min: number) => barsOf(day.state, at(min)).has(ribs);
    expect([isBarred(0), isBarred(150)]).toEqual([false, true]);
    expect(day.ask({ kind: 'start', task: task(ribs, 'cut') }, at(150), by)).toMatchObject({
      refusal: { rule: 'barred', why: 'missed' },
    });
    day.ask(check(hot(ribs), 68), at(151), by);
    expect(isBarred(151)).toBe(false);
  });

  it('is held past its most, and then only thrown out', () => {
    const day = atNoon();
    const on: CheckOn = { kind: 'discard-time', batch: ribs };
    for (const min of [60, 160]) day.ask(check(hot(ribs), 68), at(min), by);
    const bar = barsOf(day.state, at(180)).get(ribs);
    expect(bar?.check).toMatchObject({ on, allowed: ['discard'], asked: '3 h' });
    const refused = day.ask({ kind: 'start', task: task(ribs, 'cut') }, at(180), by);
    if (refused.ok) throw new Error('it was begun');
    expect(sayRefusal(refused.refusal, say)).toContain('how long it is held');
  });

  it('is asked for till it is thrown out, however many more of its dish are sold', () => {
    const day = atNoon();
    const { dish, service, portions } = must(
      plan.built.batches.find(({ id }) => id === beans),
      beans,
    );
    day.ask(check(hot(beans), 68), at(1), by);
    day.ask({ kind: 'sold', service, dish, sold: 3 }, at(2));
    const end = must(
      openChecks(day.state).find(({ key }) => key === `discard-time ${beans}`),
      'an end',
    ).lateAt;
    // Of another batch of it, which the log of this noon does not have yet.
    const sold = { kind: 'portionsSold', service, dish, sold: portions + 20 } as const;
    day.keep(sold, after(end, minutes(30)), by);
    const late = after(end, minutes(31));
    expect(openChecks(day.state).map(({ key }) => key)).toContain(`discard-time ${beans}`);
    const view = viewOf(openLive(day.state, late), { kind: 'pass' });
    const old = view.checks.find(({ key }) => key === `discard-time ${beans}`)?.old;
    expect(old?.portions).toBe(portions - 3);
    expect(old?.where?.en).toBeTruthy();
  });

  it('does not go to the pass before the end of its cook was read and was hot enough', () => {
    const day = new Telling();
    const batch = 'lunch-chicken-1' as BatchId;
    const on: CheckOn = { kind: 'end-temperature', batch };
    const steps = plan.built.tasks.filter((each) => each.batch === batch && each.work === 'hands');
    for (const { id, step } of steps.filter(({ step }) => step !== 'cut')) {
      day.keep({ kind: 'taskStarted', task: id, hand: by }, at(step === 'off' ? 2 : 0), by);
      day.keep({ kind: 'taskFinished', task: id }, at(step === 'off' ? 3 : 1), by);
    }
    const cut = { kind: 'start', task: task(batch, 'cut') } as const;
    expect(day.ask(cut, at(4), by)).toMatchObject({ refusal: { check: 'end-temperature' } });
    // 161.6 °F, where 3-401.11(A)(3) asks poultry for 165 (secondary copy).
    day.ask(check(on, 72), at(5), by);
    const refused = day.ask(cut, at(6), by);
    if (refused.ok) throw new Error('it was begun');
    expect(sayRefusal(refused.refusal, say)).toMatch(/found 161.6 °F, asked 165 °F \(3-401.11/);
    day.ask({ kind: 'correct', on, action: 'keep-cooking' }, at(7), by);
    day.ask(check(on, 76), at(30), by);
    expect(day.ask(cut, at(31), by).ok).toBe(true);
  });

  it('came too warm, and bars what was begun before that was written down, too', () => {
    const day = new Telling();
    const began = 'dinner-ribs-1' as BatchId;
    const { bought } = must(
      plan.built.batches.find(({ id }) => id === began),
      began,
    );
    const cut = must(bought, 'a cut that is bought');
    day.keep({ kind: 'taskStarted', task: task(began, 'pull'), hand: by }, at(0), by);
    const amount = { pieces: 4, weightKg: kilograms(8), supplier: 'Elm Meats' };
    const lot = { cut, ...amount, tempC: celsius(15), useBy: null, code: null };
    // It may well be of this lot: whoever takes it in types that once hands are free.
    expect(day.ask({ kind: 'receive', ...lot }, at(30), by).ok).toBe(true);
    const bars = barsOf(day.state, at(31));
    const ofCut = plan.built.batches.filter((each) => each.bought === cut);
    expect(ofCut.length).toBeGreaterThan(1);
    for (const { id } of ofCut) expect(bars.get(id)).toMatchObject({ why: 'failed' });
  });

  it('is raw and was out of the cooler too long: no hand goes on with it (3-501.19(B))', () => {
    const day = new Telling();
    const batch = 'dinner-ribs-1' as BatchId;
    day.keep({ kind: 'taskStarted', task: task(batch, 'pull'), hand: by }, at(0), by);
    day.keep({ kind: 'taskFinished', task: task(batch, 'pull') }, at(20), by);
    const square = { kind: 'start', task: task(batch, 'square') } as const;
    expect(day.ask(square, at(241), by)).toMatchObject({
      refusal: { rule: 'barred', check: 'out-of-temperature', breach: { asked: '4 h' } },
    });
    expect(day.ask(square, at(239), by).ok).toBe(true);
  });
});

describe('a load that would drip', () => {
  it('does not go in above what lies there already, by the row that forbids it', () => {
    const day = new Telling();
    const { clashes, lags } = plan.built.problem;
    const loadOf = (stay: TaskId) =>
      lags.find(({ to, from }) => to.activity === stay && from.activity.endsWith('/load'))?.from
        .activity;
    const bird = must(
      clashes.find(
        ({ upper, lower, reason, places }) =>
          reason === 'raw-poultry-above' &&
          places.length > 0 &&
          loadOf(upper.activity) !== undefined &&
          loadOf(lower.activity) !== undefined,
      ),
      'a bird over something else',
    );
    const [upper, lower] = [bird.upper.activity, bird.lower.activity];
    const [above, below] = must(bird.places[0], 'two racks');
    const to = (resource: string) => resource.slice('slot:'.length) as SlotId;
    const moves = [
      { stay: upper, need: 0, to: to(above) },
      { stay: lower, need: 0, to: to(below) },
    ];
    day.keep({ kind: 'slotsMoved', moves }, at(-30), by);
    const [up, low] = [must(loadOf(upper), upper), must(loadOf(lower), lower)];
    const before = (load: TaskId) => {
      const own = plan.built.tasks.filter(({ batch }) => load.startsWith(`${batch}/`));
      const hands = own.filter(({ work }) => work === 'hands').map(({ id }) => id);
      for (const id of hands.slice(0, hands.indexOf(load))) {
        day.keep({ kind: 'taskStarted', task: id, hand: by }, at(-20), by);
        day.keep({ kind: 'taskFinished', task: id }, at(-10), by);
      }
    };
    before(low);
    before(up);
    day.keep({ kind: 'taskStarted', task: low, hand: by }, at(-5), by);
    day.keep({ kind: 'taskFinished', task: low }, at(-4), by);
    expect(loadsOf(day.state, indexOf(plan), upper)[0]?.slot).toBe(to(above));
    const refused = day.ask({ kind: 'start', task: up }, at(0), by);
    expect(refused).toMatchObject({
      refusal: { rule: 'drips', row: { id: 'raw-poultry-above', section: '3-302.11(A)(2)' } },
    });
  });
});
