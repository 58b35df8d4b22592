import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { construct, validate } from '../../../shared/schedule/index.ts';
import { randomProblem } from './random-problem.ts';

describe('a trial', () => {
  it('finds the same schedule, and is told of a refusal what found no room and no more', () => {
    let refused = 0;
    fc.assert(
      fc.property(randomProblem({ dueS: 60 }), (problem) => {
        if (validate(problem).length > 0) return;
        const trial = construct(problem, { seed: 1, isTrial: true });
        const full = construct(problem, { seed: 1 });
        if (full.ok) expect(trial).toEqual(full);
        if (trial.ok || full.ok) return;
        refused++;
        expect(trial.conflicts).toEqual(full.conflicts.slice(-1));
      }),
      { numRuns: 60 },
    );
    expect(refused).toBeGreaterThan(0);
  });
});
