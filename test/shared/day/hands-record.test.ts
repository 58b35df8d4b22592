import { describe, expect, it } from 'vitest';
import { built } from '../../../server/built-day.ts';
import { demoDay } from '../../../server/demo/index.ts';
import type { AdoptedPlan } from '../../../shared/day/index.ts';
import { carryOf, dayFrom, handTimesAfter, pacesOf } from '../../../shared/day/index.ts';
import type { TaskId } from '../../../shared/kernel/index.ts';
import { after, must, seconds } from '../../../shared/kernel/index.ts';
import type { Pace } from '../../../shared/plan/index.ts';
import { noon, plan, Telling } from './demo.ts';

const files = demoDay(noon, 'America/Chicago');
const { tasks, batches, problem, origin } = plan.built;
const routeOf = new Map(batches.map(({ id, route }) => [id, route]));
const done = must(
  tasks.find(({ work, batch }) => work === 'hands' && routeOf.has(batch)),
  'work of hands',
);
const route = must(routeOf.get(done.batch), 'its route');
const own = tasks.filter(
  ({ batch, step, work }) => work === 'hands' && step === done.step && routeOf.get(batch) === route,
);

/** How long the plan has it, of a hand that is trained. */
function lengthIn(of: AdoptedPlan['built'], id: TaskId) {
  const activity = must(
    of.problem.activities.find((each) => each.id === id),
    id,
  );
  const { length } = must(activity.modes[0], id);
  if (length.kind !== 'work') throw new Error('no work');
  return length;
}
const placed = (id: TaskId) =>
  must(
    plan.schedule.placements.find(({ activity }) => activity === id),
    id,
  );
const plannedS = (id: TaskId) => placed(id).endS - placed(id).startS;

/** Days on each of which every task of the step takes so many times what it was planned to. */
function days(count: number, ratio: number, adopted: AdoptedPlan = plan): Telling {
  const telling = new Telling(adopted);
  for (let n = 0; n < count; n++) {
    const day = `2026-04-${String(n + 10)}`;
    telling.nextDay({ ...adopted, built: { ...adopted.built, day } }, after(origin, seconds(n)));
    for (const { id } of own) {
      const endS = Math.round(plannedS(id) * ratio);
      telling.keep({ kind: 'taskStarted', task: id, hand: null }, origin, null, day);
      telling.keep({ kind: 'taskFinished', task: id }, after(origin, seconds(endS)), null, day);
    }
  }
  return telling;
}

const paceIn = (telling: Telling): Pace | undefined =>
  pacesOf(handTimesAfter(telling.state)).find((each) => each.step === done.step);
const enoughDays = Math.ceil(8 / own.length);

describe('how long hands take', () => {
  it('is what the catalogue says till a step was done eight times', () => {
    expect(paceIn(days(Math.ceil(7 / own.length) - 1, 1.5))).toBeUndefined();
    expect(paceIn(days(enoughDays, 1.5))).toMatchObject({ route });
  });

  it('is from then on what they took here, in every plan, with its spread', () => {
    const paces = [must(paceIn(days(enoughDays, 1.5)), 'a pace')];
    expect(paces[0]?.typical).toBeCloseTo(1.5, 2);
    const made = built({ ...files, paces });
    if (!made.ok) throw new Error('a day');
    for (const { id } of own) {
      const { typicalS, lowS, highS } = lengthIn(made.day, id);
      expect(typicalS / lengthIn(plan.built, id).typicalS).toBeCloseTo(1.5, 1);
      expect(lowS).toBeLessThanOrEqual(typicalS);
      expect(highS).toBeGreaterThanOrEqual(typicalS);
    }
    const others = problem.activities.filter(({ id }) => !own.some((each) => each.id === id));
    for (const { id, modes } of others.slice(0, 40)) {
      const [mode] = modes;
      const same = made.day.problem.activities.find((each) => each.id === id)?.modes[0];
      if (same && mode?.length.kind === 'work') expect(same.length).toEqual(mode.length);
    }
  });

  it('stays so when hands then take as long as was planned', () => {
    const pace = must(paceIn(days(enoughDays, 1.5)), 'a pace');
    // Planned by that pace, a task of the same length on the clock is one and a half again.
    const asPlanned = { ...plan, paces: [pace] };
    const settled = must(paceIn(days(enoughDays, 1, asPlanned)), 'a pace');
    expect(settled.typical).toBeCloseTo(1.5, 2);
  });

  it('learns nothing from a tap that was forgotten', () => {
    expect(paceIn(days(enoughDays + 1, 9))).toBeUndefined();
  });

  it('goes by the last twenty times, and is carried from day to day', () => {
    const telling = days(Math.ceil(20 / own.length) + 1, 1.2);
    const times = must(
      handTimesAfter(telling.state).find(({ step }) => step === done.step),
      'its times',
    );
    expect(times.ratios).toHaveLength(20);
    const carried = dayFrom(JSON.parse(JSON.stringify(carryOf(telling.state))));
    expect(carried.handTimes).toEqual(handTimesAfter(telling.state));
  });
});
