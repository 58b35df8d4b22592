import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createPace } from '../../../server/socket/pace.ts';

it('lets a burst through at once and what follows at the steady rate', () => {
  const pace = createPace({ perSecond: 5, burst: 3 });
  expect([1, 2, 3, 4, 5].map(() => pace.take(0))).toEqual([0, 0, 0, 200, 400]);
});

it('fills up again with time', () => {
  const pace = createPace({ perSecond: 5, burst: 3 });
  for (const _tap of [1, 2, 3]) pace.take(0);
  expect([1, 2, 3, 4].map(() => pace.take(600))).toEqual([0, 0, 0, 200]);
});

it('lets no more through in any stretch than burst and rate give, and keeps the order', () => {
  const gaps = fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(gaps, (gapsMs) => {
      const pace = createPace({ perSecond: 5, burst: 4 });
      let nowMs = 0;
      const turns = gapsMs.map((gapMs) => {
        nowMs += gapMs;
        return nowMs + pace.take(nowMs);
      });
      turns.forEach((turnMs, i) => {
        expect(turnMs).toBeGreaterThanOrEqual(turns[i - 1] ?? 0);
        const within = turns.filter((other) => other >= turnMs && other < turnMs + 1000).length;
        expect(within).toBeLessThanOrEqual(4 + 5);
      });
    }),
  );
});
