import { describe, expect, it } from 'vitest';
import { must, toFahrenheit } from '../../../shared/kernel/index.ts';
import { fireOf, kitchenResource, resourceId, taskId } from '../../../shared/plan/index.ts';
import { dayWith, kitchenEveryDay, onePlan } from './three-elms.ts';

const day = dayWith({ cookPlan: onePlan({}) });
const batch = must(day.batches[0], 'a batch');
const activity = (step: string) =>
  must(
    day.problem.activities.find(({ id }) => id === taskId(batch.id, step)),
    step,
  );
const task = (step: string) =>
  must(
    day.tasks.find(({ id }) => id === taskId(batch.id, step)),
    step,
  );
const lagsInto = (step: string) =>
  day.problem.lags.filter(({ to }) => to.activity === taskId(batch.id, step));

describe('a batch of ribs', () => {
  it('is as many whole slabs as its portions ask for', () => {
    // 20 × 12 oz = 15 lb served ÷ 98 % ÷ 68 % ÷ 70 % = 32.2 lb raw ÷ 4.2 lb = 7.66 slabs.
    expect(batch.pieces).toBe(8);
    expect(batch.portions).toBe(20);
    expect(batch.name).toEqual({ en: 'Spare ribs · Noon', es: 'Costillas · Noon' });
  });

  it('counts its times from midnight of the day before', () => {
    expect(batch.neededS).toBe(36 * 3600);
  });

  it('takes a trained hand and a table to square, or a learning one for longer', () => {
    const { modes } = activity('square');
    expect(modes.map(({ id }) => id)).toEqual([
      ...['trained · 1', 'trained · 2', 'trained · 3'],
      ...['learning × 1.5 · 1', 'learning × 1.5 · 2', 'learning × 1.5 · 3'],
    ]);
    expect(modes[0]?.length).toEqual({ kind: 'work', lowS: 720, typicalS: 960, highS: 1440 });
    expect(modes[3]?.length).toMatchObject({ typicalS: 1440 });
    expect(modes[0]?.needs.map(({ role }) => role)).toEqual(['hand', 'table']);
  });

  it('asks first for those who can do little else', () => {
    const [hand] = activity('load').modes[0]?.needs ?? [];
    const people = hand?.oneOf.map(kitchenResource);
    expect(people?.map((thing) => thing.kind === 'hand' && thing.person)).toEqual([
      ...['odile', 'teo', 'bea'],
    ]);
  });

  it('stays on one rack of a smoker, at its set temperature, from load to off', () => {
    const stay = activity('stay');
    expect(stay.modes.map(({ id }) => id)).toEqual([
      ...['a/1', 'a/2', 'a/3', 'a/4'],
      ...['b/1', 'b/2', 'b/3', 'b/4'],
    ]);
    const [state] = stay.modes[0]?.states ?? [];
    expect(toFahrenheit(fireOf(must(state, 'a fire').state))).toBeCloseTo(275, 6);
    const moments = lagsInto('stay').map(({ from, to, minS, maxS }) => [
      ...[from.activity.split('/')[1], from.end, to.end, minS, maxS],
    ]);
    expect(moments).toEqual([
      ['load', 'start', 'start', 0, 0],
      ['off', 'end', 'end', 0, 0],
    ]);
    expect(task('stay').loads).toEqual([8]);
  });

  it('sets without a gap: the wait begins when the rub is on and ends when loading begins', () => {
    expect(lagsInto('set-short')[0]).toMatchObject({ minS: 0, maxS: 0 });
    expect(lagsInto('load')[0]).toMatchObject({ minS: 0, maxS: 0 });
  });

  it('may not be out of the cooler longer than the route says', () => {
    const limit = day.problem.lags.find(({ reason }) => reason === 'safety');
    expect(limit?.from.activity).toBe(taskId(batch.id, 'pull'));
    expect(limit?.maxS).toBe(3 * 3600);
  });

  it('promises its first portion for the opening, and sells till it is sold', () => {
    const [goal] = day.problem.goals;
    expect(goal).toMatchObject({ activity: taskId(batch.id, 'serve'), end: 'start' });
    expect(goal?.dueS).toBe(batch.neededS);
    expect(activity('serve').releaseS).toBe(batch.neededS);
    expect(activity('serve').modes[0]?.length).toEqual({ kind: 'wait', minS: 5400, maxS: 5400 });
  });

  it('weighs raw before the trim, trimmed before the fire and cooked after it', () => {
    expect(task('square').weightKg).toBe(batch.rawKg);
    expect(task('rub').weightKg).toBe(batch.trimmedKg);
    expect(task('cut').weightKg).toBe(batch.cookedKg);
  });

  it('tells the wall of each task what to weigh, to mind and to find', () => {
    expect(task('weigh-rub').mix?.weightKg).toBeCloseTo(batch.trimmedKg * 0.025, 9);
    expect(task('square').station).toBe('trim');
    expect(task('weigh-rub').station).toBe('mix');
    expect(task('bend').check?.coreAtLeastC).toBeCloseTo(87.78, 2);
    expect(task('square').caution?.es).toContain('guante');
  });
});

describe('the lists of a day', () => {
  it('pull each cut in one line, by when the longest chain must begin', () => {
    const [line] = day.pull;
    expect(line).toMatchObject({ cut: 'spare-ribs', pieces: 8, weightKg: batch.rawKg });
    // 45½ min of hands to the set, 10 set, 2:40 loading, 2:30 smoke, 5 colour, 16 wrap, 1:15, 5
    // bend, 2:40 off, 10, 5.
    const chainMin = 4 + 16 + 8 + 8 + 2 + 4 + 10 + 8 / 3 + 150 + 5 + 16 + 75 + 5 + 8 / 3 + 10 + 5;
    expect(batch.neededS - (line?.byS ?? 0)).toBeCloseTo(chainMin * 60, 6);
  });

  it('mix what all batches take of it, once each, and a little over', () => {
    const rub = day.mixes.find(({ mix }) => mix === 'rib-rub');
    expect(rub?.weightKg).toBeCloseTo(batch.trimmedKg * 0.025 * 1.1, 9);
    expect(rub?.allergens).toEqual(['mustard']);
    const parts = rub?.parts.reduce((sum, part) => sum + part.weightKg, 0);
    expect(parts).toBeCloseTo(rub?.weightKg ?? 0, 9);
  });

  it('expect the tubs of trim that the cut leaves', () => {
    const tips = day.tubs.find(({ tub }) => tub === 'rib-tips');
    expect(tips).toMatchObject({ batch: batch.id, goes: 'cooked' });
    expect(tips?.weightKg).toBeCloseTo(batch.rawKg * 0.18, 9);
  });
});

describe('wishes', () => {
  it('for slots keep a batch to them', () => {
    const wished = dayWith({ cookPlan: onePlan({ slots: ['b/2', 'b/3'] }) });
    const stay = wished.problem.activities.find(({ id }) => id.endsWith('/stay'));
    expect(stay?.modes.map(({ id }) => id)).toEqual(['b/2', 'b/3']);
    expect(stay?.modes[0]?.needs.map(({ oneOf }) => oneOf)).toEqual([['slot:b/2'], ['load:b/2']]);
  });

  it('for a hand keep a step to it, at its own pace', () => {
    const wished = dayWith({ cookPlan: onePlan({ hands: { square: 'joon' } }) });
    const square = wished.problem.activities.find(({ id }) => id.endsWith('/square'));
    expect(square?.modes[0]?.id).toEqual('learning × 1.5 · 1');
    expect(square?.modes[0]?.needs[0]?.oneOf).toEqual(['hand:joon']);
  });
});

describe('the resources of a day', () => {
  it('are named so that they can be read back', () => {
    for (const { id } of day.problem.resources) {
      expect(resourceId(kitchenResource(id))).toBe(id);
    }
  });

  it('are open for hands in their shifts alone', () => {
    const teo = day.problem.resources.find(({ id }) => id === 'hand:teo');
    // The night of 24 November: 22:00 to 3:00 and 3:30 to 8:00, from midnight before.
    expect(teo).toMatchObject({
      open: [
        { start: 22 * 3600, end: 27 * 3600 },
        { start: 27.5 * 3600, end: 32 * 3600 },
      ],
    });
  });

  it('come from cold by a preheat, and from one set temperature to another by the degree', () => {
    const both = dayWith();
    const fire = both.problem.resources.find(({ id }) => id === 'fire:a');
    const changes = fire?.kind === 'state' ? fire.changes : [];
    const takes = (from: string, to: string) =>
      changes.find((change) => change.from === from && change.to === to)?.takesS;
    expect(takes('cold', '135.0 °C')).toBe(75 * 60);
    // 25 °F at 3 °F a minute, up to the tenth of a degree that a state is named by.
    expect(takes('121.1 °C', '135.0 °C')).toBeCloseTo((25 / 3) * 60, -1);
  });
});

describe('a service on the night of a clock change', () => {
  it('keeps the seconds that pass before it', () => {
    // Clocks go forward at 2:00 on 8 March 2026 in Chicago (IANA tzdata).
    const plan = { ...onePlan({}), day: '2026-03-08' };
    const [spring] = dayWith({ cookPlan: plan, kitchen: kitchenEveryDay }).batches;
    expect(spring?.neededS).toBe(35 * 3600);
  });

  it('opens at the first of two times where its own comes twice', () => {
    // Clocks go back at 2:00 on 1 November 2026 in Chicago, from UTC-5 to UTC-6 (IANA tzdata).
    const plan = { ...onePlan({}, { opens: '01:30', closes: '05:00' }), day: '2026-11-01' };
    const [service] = dayWith({ cookPlan: plan, kitchen: kitchenEveryDay }).services;
    expect(service?.opensAt).toBe(Date.UTC(2026, 10, 1, 6, 30));
    expect(service?.closesAt).toBe(Date.UTC(2026, 10, 1, 11));
  });
});
