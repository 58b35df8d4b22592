import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { solveExactly } from '../../../../shared/schedule/rcpsp/exact.ts';
import { type Project, projectOf } from '../../../../shared/schedule/rcpsp/project.ts';
import { faultsOf } from './check-starts.ts';
import { randomProject } from './random-project.ts';
import { timeIndexed } from './time-indexed.ts';

const toTheEnd = { shouldStop: () => false };
const highs = await loadHighs();

/** By HiGHS (MIT), a solver of another kind: branch and cut over a time-indexed model. */
function byHighs(project: Project, horizon: number): number | 'infeasible' {
  const { Status, ObjectiveValue } = answer(timeIndexed(project, horizon));
  if (Status === 'Infeasible') return 'infeasible';
  if (Status !== 'Optimal') throw new Error(`no answer: ${Status}`);
  return Math.round(ObjectiveValue);
}

/** Its presolve stops with an error at a rare model that it solves without. */
function answer(model: string) {
  try {
    return highs.solve(model);
  } catch {
    return highs.solve(model, { presolve: 'off' });
  }
}

const SEEDS = 200;
/** No activity is longer than 4 and no lag than 5: with so much for each there is room for all. */
const PERIODS_EACH = 5;

describe('the exact search', () => {
  it(`agrees with an independent solver on ${SEEDS} projects with least and most lags`, () => {
    let infeasible = 0;
    for (let seed = 1; seed <= SEEDS; seed++) {
      const activities = 4 + (seed % 2);
      const project = randomProject(seed, { activities, kinds: 2, lagged: true });
      const solved = solveExactly(project, toTheEnd);
      // What is longer than a schedule that holds need not be looked at.
      const horizon = solved.best?.makespan ?? activities * PERIODS_EACH;
      const expected = byHighs(project, horizon);
      if (solved.best) expect(faultsOf(project, solved.best.starts)).toEqual([]);
      if (expected === 'infeasible') infeasible++;
      const found = solved.best?.makespan ?? solved.status;
      expect({ seed, found }).toEqual({ seed, found: expected });
    }
    // Both answers are given often enough for the agreement to mean something.
    expect(infeasible).toBeGreaterThan(SEEDS / 10);
    expect(infeasible).toBeLessThan(SEEDS / 2);
  });

  it('gives schedules that keep every lag and capacity, and says when none is shorter', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const project = randomProject(seed, { activities: 12, kinds: 3, lagged: true });
      const { status, best, bound } = solveExactly(project, toTheEnd);
      if (best === undefined) {
        expect(status).toBe('infeasible');
        continue;
      }
      expect(faultsOf(project, best.starts)).toEqual([]);
      expect(status).toBe('optimal');
      expect(bound).toBe(best.makespan);
    }
  });

  it('proves that a circle of lags cannot be kept', () => {
    const idle = { duration: 0, demands: [] };
    const circle = projectOf(
      [idle, idle, idle, idle],
      [],
      [
        [1, 2, 3],
        [2, 1, -2],
      ],
    );
    expect(solveExactly(circle, toTheEnd).status).toBe('infeasible');
  });

  it('proves that two who must run together do not fit beside each other', () => {
    const idle = { duration: 0, demands: [] };
    const cook = { duration: 3, demands: [1] };
    const lags = [
      [0, 1, 0],
      [0, 2, 0],
      [1, 3, 3],
      [2, 3, 3],
      [1, 2, -1],
      [2, 1, -1],
    ] as const;
    const racks = (count: number) => projectOf([idle, cook, cook, idle], [count], lags);
    expect(solveExactly(racks(1), toTheEnd).status).toBe('infeasible');
    expect(solveExactly(racks(2), toTheEnd).best?.makespan).toBe(3);
  });

  it('refuses a need greater than what there is', () => {
    const idle = { duration: 0, demands: [] };
    const project = projectOf([idle, { duration: 1, demands: [3] }, idle], [2], [[0, 1, 0]]);
    expect(solveExactly(project, toTheEnd).status).toBe('infeasible');
  });

  it('claims nothing when it is stopped at once', () => {
    const project = randomProject(8, { activities: 8, kinds: 2, lagged: false });
    const { status, best } = solveExactly(project, { shouldStop: () => true });
    expect({ status, best }).toEqual({ status: 'unknown', best: undefined });
  });

  it('keeps what it has when it is stopped amid a long search, the same each time', () => {
    const project = randomProject(4, { activities: 60, kinds: 3, lagged: false });
    const stopped = () => {
      let asked = 0;
      return solveExactly(project, { shouldStop: () => ++asked > 1_500 });
    };
    const { status, best, bound } = stopped();
    expect(status).toBe('feasible');
    expect(faultsOf(project, best?.starts ?? [])).toEqual([]);
    expect(bound).toBeLessThan(best?.makespan ?? 0);
    expect(stopped().best).toEqual(best);
  });

  it('looks only for what is shorter than a schedule it is given', () => {
    const project = randomProject(8, { activities: 8, kinds: 2, lagged: false });
    const best = solveExactly(project, toTheEnd).best;
    if (best === undefined) throw new Error('this project has a schedule');
    const again = solveExactly(project, { ...toTheEnd, known: best });
    expect(again).toMatchObject({ status: 'optimal', best });
  });
});
