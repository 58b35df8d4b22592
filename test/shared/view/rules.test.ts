import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pitRule, ruledMinutes, shareOf } from '../../../shared/view/index.ts';
import { at, NOW, smokerView } from '../../client/fixtures.ts';

describe('the ruled minutes under a task', () => {
  it('are gone behind now and ticked ahead of it', () => {
    const { goneShare, tickShares } = ruledMinutes(at(-5), at(5), NOW);
    expect(goneShare).toBe(0.5);
    expect(tickShares).toEqual([0.6, 0.7, 0.8, 0.9]);
  });

  it('are all gone once the task runs over', () => {
    expect(ruledMinutes(at(-20), at(-5), NOW)).toEqual({ goneShare: 1, tickShares: [] });
  });

  it('have not begun before the start', () => {
    const { goneShare, tickShares } = ruledMinutes(at(10), at(14), NOW);
    expect([goneShare, tickShares.length]).toEqual([0, 3]);
  });

  it('are never so many that they run into one another', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (lastMin) => {
        const { tickShares } = ruledMinutes(NOW, at(lastMin), NOW);
        expect(tickShares.length).toBeLessThanOrEqual(40);
        expect(tickShares.every((share) => share > 0 && share < 1)).toBe(true);
      }),
    );
  });
});

describe('the rule under the racks', () => {
  it('runs in whole hours from before now until what is in has ended', () => {
    const rule = pitRule(smokerView.smokers, NOW);
    expect(rule.from).toBeLessThanOrEqual(at(-60));
    expect(rule.to).toBeGreaterThanOrEqual(at(353));
    expect(rule.hours.every((hour) => hour % 3_600_000 === 0)).toBe(true);
    expect([shareOf(rule, rule.from), shareOf(rule, rule.to)]).toEqual([0, 1]);
    expect(shareOf(rule, NOW)).toBeGreaterThan(0);
  });

  it('shows six hours when nothing is in', () => {
    const { from, to, hours } = pitRule([], NOW);
    expect([(to - from) / 3_600_000, hours.length]).toEqual([6, 7]);
  });
});
