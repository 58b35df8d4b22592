import fc from 'fast-check';
import loadHighs from 'highs';
import { expect, it } from 'vitest';
import { solveExactly } from '../../../shared/schedule/exact/index.ts';
import { check, type Problem } from '../../../shared/schedule/index.ts';
import { scheduleOf } from '../../../shared/schedule/schedule-of.ts';
import { netAiming } from '../../../shared/schedule/search.ts';
import { validate } from '../../../shared/schedule/validate.ts';
import { type Measure, measureOf, worthOf } from '../../../shared/schedule/worth.ts';
import { programOf } from './day-program.ts';
import { smallDay } from './small-day.ts';

const highs = await loadHighs();
const DAYS = 60;

/** By HiGHS (MIT), a solver of another kind: branch and cut over a time-indexed model. */
function byHighs(day: Problem): number | 'infeasible' {
  const { Status, ObjectiveValue } = answer(programOf(day, measured(day)));
  if (Status === 'Infeasible') return 'infeasible';
  if (Status !== 'Optimal') throw new Error(`no answer: ${Status}`);
  return Math.round(ObjectiveValue);
}

/** What a day is worth is asked of none that is refused at once: of that only whether it can be. */
function measured(day: Problem): Measure {
  if (validate(day).length === 0) return measureOf(day);
  const size = day.activities.length;
  return { weights: new Float64Array(size), dueS: new Int32Array(size) };
}

/** Its presolve stops with an error at a rare model that it solves without. */
function answer(program: string) {
  try {
    return highs.solve(program);
  } catch {
    return highs.solve(program, { presolve: 'off' });
  }
}

function exactly(day: Problem): number | 'infeasible' {
  if (validate(day).length > 0) return 'infeasible';
  const { net } = netAiming(day, { aim: 0, lateS: day.goals.map(() => 0) });
  if (!net) return 'infeasible';
  const { status, slots } = solveExactly(net, measureOf(day), { nodesMost: 200_000 });
  expect(status).toBe('proven');
  if (!slots) return 'infeasible';
  const schedule = scheduleOf(day, slots);
  expect(check(day, schedule)).toEqual([]);
  return worthOf(day, schedule).aheadS;
}

it(`the best plan of ${DAYS} small days is as good as an independent solver proves`, () => {
  let feasible = 0;
  for (const [number, day] of fc.sample(smallDay, { seed: 7, numRuns: DAYS }).entries()) {
    const found = exactly(day);
    if (found !== 'infeasible') feasible++;
    expect({ number, found }).toEqual({ number, found: byHighs(day) });
  }
  // Both answers are given often enough for the agreement to mean something.
  expect(feasible).toBeGreaterThan(DAYS / 2);
  expect(feasible).toBeLessThan(DAYS);
});
