import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  genetic,
  lowerBound,
  type Project,
  precedenceOf,
  solveExactly,
} from '../../../../shared/schedule/rcpsp/index.ts';
import { faultsOf } from './check-starts.ts';
import { randomProject } from './random-project.ts';

const precedence = (project: Project) => {
  const found = precedenceOf(project);
  if (found === undefined) throw new Error('drawn without most-lags');
  return found;
};

const search = (project: Project, schedules: number, shouldStop?: () => boolean) =>
  genetic(project, precedence(project), {
    seed: 5,
    schedules,
    bound: 0,
    ...(shouldStop && { shouldStop }),
  });

const projects = fc
  .record({
    seed: fc.nat(),
    activities: fc.integer({ min: 1, max: 25 }),
    // More resources than go into one word, too.
    kinds: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ seed, activities, kinds }) => randomProject(seed, { activities, kinds, lagged: false }));

describe('the genetic search', () => {
  it('gives schedules that keep every precedence and every capacity', () => {
    fc.assert(
      fc.property(projects, fc.integer({ min: 1, max: 120 }), (project, schedules) => {
        const { makespan, starts } = search(project, schedules);
        expect(faultsOf(project, starts)).toEqual([]);
        expect(makespan).toBe(starts.at(-1));
      }),
    );
  });

  it('never goes below the lower bound, nor the bound below what can be done', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const project = randomProject(seed, { activities: 9, kinds: 2, lagged: false });
      const optimum = solveExactly(project, { shouldStop: () => false }).best?.makespan ?? 0;
      const { bound, criticalPath } = lowerBound(project, precedence(project));
      expect(criticalPath).toBeLessThanOrEqual(bound);
      expect(bound).toBeLessThanOrEqual(optimum);
      expect(search(project, 50).makespan).toBeGreaterThanOrEqual(optimum);
    }
  });

  it('finds the optimum of nearly every small project', () => {
    const missed = Array.from({ length: 60 }, (_, seed) => {
      const project = randomProject(seed, { activities: 9, kinds: 2, lagged: false });
      const optimum = solveExactly(project, { shouldStop: () => false }).best?.makespan ?? 0;
      return search(project, 500).makespan - optimum;
    }).filter((missedBy) => missedBy > 0);
    expect(missed.length).toBeLessThan(3);
  });

  it('finds the optimum of each of them when it has the time to begin anew', () => {
    for (let seed = 0; seed < 8; seed++) {
      const project = randomProject(seed, { activities: 9, kinds: 2, lagged: false });
      const optimum = solveExactly(project, { shouldStop: () => false }).best?.makespan;
      expect(search(project, 3_000).makespan).toBe(optimum);
    }
  });

  it('answers the same for the same seed and budget', () => {
    const project = randomProject(11, { activities: 25, kinds: 3, lagged: false });
    expect(search(project, 400)).toEqual(search(project, 400));
  });

  it('stops when it is told to, with what it has', () => {
    const project = randomProject(11, { activities: 25, kinds: 3, lagged: false });
    let asked = 0;
    const { starts } = search(project, 1_000_000, () => ++asked > 3);
    expect(asked).toBe(4);
    expect(faultsOf(project, starts)).toEqual([]);
  });
});
