import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import type { Problem, Schedule, Timeline } from '../../../shared/schedule/index.ts';
import { construct, createTimeline } from '../../../shared/schedule/index.ts';
import { type News, someNews, tell } from './news.ts';
import { randomProblem } from './random-problem.ts';

/** Runs a law on random days to which random things happen. */
function law(
  holds: (timeline: Timeline, problem: Problem, news: readonly News[], plan: Schedule) => void,
  numRuns = 300,
) {
  fc.assert(
    fc.property(randomProblem({ dueS: 400 }), someNews, (problem, news) => {
      const planned = construct(problem, { seed: 1 });
      if (!planned.ok) return;
      holds(createTimeline(problem, planned.schedule), problem, news, planned.schedule);
    }),
    { numRuns },
  );
}

describe('a timeline', () => {
  it('begins as it was published, and stays so while there is no news', () => {
    law((timeline, _, __, plan) => {
      expect(timeline.schedule).toEqual(plan);
      expect(timeline.broken()).toEqual([]);
      expect(timeline.notBefore(seconds(0)).changed).toEqual([]);
      expect(timeline.schedule).toEqual(plan);
    });
  });

  it('mended from change to change is what it would be worked out from scratch', () => {
    law((timeline, problem, news) => {
      for (const each of news) {
        tell(timeline, problem, each);
        expect(timeline.fork().moved([]).changed, JSON.stringify(each)).toEqual([]);
      }
    }, 500);
  });
});
