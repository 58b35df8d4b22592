import { describe, expect, it } from 'vitest';
import { limitAt, openLive } from '../../../shared/day/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { foodCode } from '../../../shared/safety/index.ts';
import { noon, plan } from './demo.ts';
import { atNoon } from './demo-noon.ts';

const live = openLive(atNoon().state, noon);
const taskOf = (route: string, step: string) =>
  must(
    plan.built.tasks.find(
      (task) =>
        task.step === step &&
        plan.built.batches.find(({ id }) => id === task.batch)?.route === route,
    ),
    step,
  );
const rowOf = (id: string) =>
  must(
    foodCode.rows.find((row) => row.id === id),
    id,
  );

describe('the number that food is held to at a piece of work', () => {
  it('is what the first stage of cooling asks, by two hours after it began', () => {
    const strained = live.timesOf(taskOf('stock', 'strain').id).endS;
    const { atMostC, byAt } = must(limitAt(live, taskOf('stock', 'check-warm').id), 'a limit');
    expect(rowOf('cooling').limit).toMatchObject({ stages: [{ to: '70 °F', within: '2 h' }, {}] });
    expect(atMostC).toBeCloseTo(21.1, 1);
    expect(must(byAt, 'a time') - live.instantOf(strained)).toBe(2 * 3_600_000);
  });

  it('is what hot holding asks where food is set out out of the cabinet', () => {
    const limit = must(limitAt(live, taskOf('pit-beans', 'set-out').id), 'a limit');
    expect(rowOf('hot-hold').limit).toMatchObject({ atLeast: '135 °F' });
    expect(limit.atLeastC).toBeCloseTo(57.2, 1);
    expect(limit).toMatchObject({ atMostC: null, byAt: null });
  });

  it('is what cold holding asks where it comes out of the cooler', () => {
    const limit = must(limitAt(live, taskOf('slaw', 'set-out').id), 'a limit');
    expect(limit.atMostC).toBeCloseTo(5, 1);
    expect(limit.atLeastC).toBeNull();
  });

  it('is none where the limits ask for no number', () => {
    expect(limitAt(live, taskOf('ribs-squared', 'square').id)).toBeNull();
  });
});
