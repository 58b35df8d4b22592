import { describe, expect, it } from 'vitest';
import { seconds } from '../../shared/kernel/index.ts';
import { check, construct, type Problem } from '../../shared/schedule/index.ts';
import { projectOf, solveExactly } from '../../shared/schedule/rcpsp/index.ts';
import { activity, goal, lag, need, problem, unit, work } from '../shared/schedule/problems.ts';

/**
 * The job shop of six jobs on six machines of H. Fisher and G. L. Thompson, "Probabilistic learning
 * combinations of local job-shop scheduling rules", in Muth and Thompson (eds.), *Industrial
 * Scheduling*, Prentice-Hall 1963; as `ft06` in the usual collections. By job: machine and length
 * of each step in turn.
 */
const FT06 = [
  [2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6],
  [1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4],
  [2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7],
  [1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9],
  [2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1],
  [1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1],
];

/** The published optimum: no schedule is shorter. */
const OPTIMUM = 55;

type Step = { readonly id: string; readonly machine: string; readonly length: number };

const jobs = FT06.map((row, job) =>
  Array.from(
    { length: row.length / 2 },
    (_, step): Step => ({
      id: `${job}/${step}`,
      machine: `machine-${row[step * 2]}`,
      length: row[step * 2 + 1] ?? 0,
    }),
  ),
);

/** The same job shop, to be done by then. */
const doneBy = (due: number): Problem =>
  problem({
    horizonS: seconds(1_000),
    activities: jobs
      .flat()
      .map(({ id, machine, length }) => activity(id, work(length), [need([machine])])),
    lags: jobs.flatMap((steps) =>
      steps.slice(1).map(({ id }, i) => lag(`${steps[i]?.id}.end`, `${id}.start`, 0)),
    ),
    resources: [0, 1, 2, 3, 4, 5].map((machine) => unit(`machine-${machine}`)),
    goals: jobs.flatMap((steps) => steps.slice(-1).map(({ id }) => goal(id, due))),
  });

describe('the job shop ft06', () => {
  it('has 36 steps that sum up to 197', () => {
    expect(jobs.flat()).toHaveLength(36);
    expect(jobs.flat().reduce((sum, { length }) => sum + length, 0)).toBe(197);
  });

  it('is never planned in less than the published optimum', () => {
    for (let due = OPTIMUM - 1; due >= OPTIMUM - 8; due--) {
      expect(construct(doneBy(due), { seed: due }).ok).toBe(false);
    }
  });

  it('is solved to the published optimum, and proven', () => {
    const steps = jobs.flat();
    const idle = { duration: 0, demands: [] };
    const machines = [0, 1, 2, 3, 4, 5];
    const work = steps.map(({ length, machine }) => ({
      duration: length,
      demands: machines.map((number) => (machine === `machine-${number}` ? 1 : 0)),
    }));
    const lags = steps.flatMap(({ id, length }, i) => {
      const next = steps[i + 1];
      const isLast = next === undefined || next.id.split('/')[0] !== id.split('/')[0];
      return [[i + 1, isLast ? steps.length + 1 : i + 2, length] as const, [0, i + 1, 0] as const];
    });
    const project = projectOf(
      [idle, ...work, idle],
      machines.map(() => 1),
      lags,
    );
    const { status, best } = solveExactly(project, { shouldStop: () => false });
    expect({ status, makespan: best?.makespan }).toEqual({ status: 'optimal', makespan: OPTIMUM });
  });

  it('is planned, rightly, in little more than the published optimum', () => {
    // This engine looks for a plan that holds, not for the shortest: a tenth more is enough room.
    const day = doneBy(Math.ceil(OPTIMUM * 1.1));
    const planned = construct(day, { seed: 1 });
    if (!planned.ok) throw new Error(JSON.stringify(planned.conflicts));
    expect(check(day, planned.schedule)).toEqual([]);
    const { placements } = planned.schedule;
    const makespan =
      Math.max(...placements.map(({ endS }) => endS)) -
      Math.min(...placements.map(({ startS }) => startS));
    expect(makespan).toBeGreaterThanOrEqual(OPTIMUM);
  });
});
