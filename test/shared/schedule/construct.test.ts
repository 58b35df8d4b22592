import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check, construct, validate } from '../../../shared/schedule/index.ts';
import { plannerContract } from '../../contracts/planner.ts';
import { randomProblem } from './random-problem.ts';

plannerContract('construct', construct);

describe('construct', () => {
  it('plans most small problems of every feature, and none of its plans is wrong', () => {
    let planned = 0;
    let tried = 0;
    fc.assert(
      fc.property(randomProblem({ dueS: 150 }), (problem) => {
        const answer = construct(problem, { seed: 1 });
        if (validate(problem).length > 0) return;
        tried++;
        if (!answer.ok) return;
        planned++;
        expect(check(problem, answer.schedule)).toEqual([]);
      }),
      { numRuns: 400 },
    );
    expect(planned / tried).toBeGreaterThan(0.6);
  });
});
