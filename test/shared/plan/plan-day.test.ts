import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import { type BuiltDay, build, planDay } from '../../../shared/plan/index.ts';
import { check, construct, type Schedule } from '../../../shared/schedule/index.ts';
import { dayWith, filesWith, kitchenEveryDay, limits, onePlan } from './three-elms.ts';

const plannedOf = (day: BuiltDay) => {
  const planned = planDay(day, construct, { seed: 1 });
  return must(planned.ok ? planned : null, JSON.stringify(planned));
};
const scheduleOf = (day: BuiltDay): Schedule => plannedOf(day).schedule;
const lengthOf = ({ placements }: Schedule, activity: string) => {
  const placed = must(
    placements.find((each) => each.activity === activity),
    activity,
  );
  return placed.endS - placed.startS;
};

describe('a day planned from a cook plan', () => {
  it('keeps every lag, every shift and every rack, and every promise', () => {
    const day = dayWith();
    const schedule = scheduleOf(day);
    expect(check(day.problem, schedule)).toEqual([]);
    for (const goal of day.problem.goals) {
      const served = schedule.placements.find(({ activity }) => activity === goal.activity);
      expect(served?.startS).toBe(goal.dueS);
    }
  });

  it('keeps work off the last minutes before a break, so that a slip costs no break', () => {
    const day = dayWith();
    const { placements } = scheduleOf(day);
    for (const { activity, endS, uses } of placements) {
      for (const { resource } of uses.filter((use) => use.resource.startsWith('hand:'))) {
        const hand = day.problem.resources.find(({ id }) => id === resource);
        const open = hand?.kind === 'capacity' ? (hand.open ?? []) : [];
        const leftS = open.map(({ end }) => end - endS).filter((left) => left >= 0);
        expect(Math.min(...leftS), activity).toBeGreaterThanOrEqual(900);
      }
    }
  });

  it('leaves the usual time in hand where there is time for it', () => {
    const schedule = scheduleOf(dayWith({ cookPlan: onePlan({}) }));
    expect(lengthOf(schedule, 'noon-ribs-1/rest')).toBeGreaterThanOrEqual(30 * 60);
  });

  it('gives that time up before it is late', () => {
    // Nobody who tends a fire comes before 7:20: from there it is 4:31 to the first portion with a
    // rest of ten minutes.
    const day = dayWith({ cookPlan: onePlan({}), kitchen: lateKitchen });
    const schedule = scheduleOf(day);
    expect(lengthOf(schedule, 'noon-ribs-1/rest')).toBeLessThan(30 * 60);
    expect(lengthOf(schedule, 'noon-ribs-1/rest')).toBeGreaterThanOrEqual(10 * 60);
    const served = schedule.placements.find(({ activity }) => activity === 'noon-ribs-1/serve');
    expect(served?.startS).toBe(36 * 3600);
  });

  it('is sound for whatever a kitchen may want of one service', () => {
    const files = filesWith({ kitchen: kitchenEveryDay });
    const choice = <T extends string>(...options: T[]) => fc.constantFrom(...options);
    const line = fc.record({
      dish: choice('ribs', 'pulled-shoulder'),
      portions: fc.integer({ min: 1, max: 90 }),
      shape: choice('even', 'early', 'middle', 'late'),
      wrap: choice('none', 'paper', 'foil'),
      set: choice('short', 'overnight'),
      binder: choice('mustard', 'vinegar', 'oil'),
    });
    fc.assert(
      fc.property(line, fc.integer({ min: 11, max: 18 }), (wanted, hour) => {
        const { dish, portions, shape, ...choices } = wanted;
        const cookPlan = onePlan(
          { dish, sales: { by: 'shape', portions, shape }, choices },
          { opens: `${hour}:00`, closes: `${hour + 3}:00` },
        );
        const { cookPlan: read } = filesWith({ cookPlan, kitchen: kitchenEveryDay });
        const built = build(read, { ...files, limits });
        const day = must(built.ok ? built.day : null, JSON.stringify(built));
        const sold = day.batches.reduce((sum, batch) => sum + batch.portions, 0);
        expect(sold).toBeGreaterThanOrEqual(portions);
        const planned = plannedOf(day);
        expect(check(planned.day.problem, planned.schedule)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});

const early = ['bea', 'odile', 'teo'];
const lateKitchen = {
  ...kitchenEveryDay,
  crew: kitchenEveryDay.crew.map((person) =>
    early.includes(person.id)
      ? { ...person, shifts: [{ on: ['2026-11-25'], from: '07:20', to: '16:00', breaks: [] }] }
      : person,
  ),
};
