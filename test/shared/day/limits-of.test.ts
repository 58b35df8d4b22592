import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../../shared/day/limits-of.ts';
import { must } from '../../../shared/kernel/index.ts';
import { recordOf } from '../../../shared/record/index.ts';
import { profiles } from '../../../shared/safety/index.ts';
import { plan, Telling } from './demo.ts';

const delivered = must(
  profiles.find(({ id }) => id === plan.kitchen.limits),
  'the profile of the demo',
);

describe('the limits of a day', () => {
  it('are those that its plan was held to, carried whole in the event that took it up', () => {
    expect(plan.limits).toEqual(delivered);
  });

  it('stay what they were, whatever the profile of that name has become since', () => {
    const then = { ...delivered, version: 7, rows: delivered.rows.slice(1) };
    const telling = new Telling();
    telling.nextDay({ ...plan, limits: then }, plan.built.origin);
    const now = must(telling.state.plan, 'a plan');
    expect(limitsOf(now)).toEqual(then);
    expect(recordOf(telling.state)?.limits).toEqual({ id: delivered.id, version: 7 });
  });

  it('are known by their name alone in the first logs', () => {
    const { limits: _, ...old } = plan;
    expect(limitsOf(old)).toEqual(delivered);
  });
});
