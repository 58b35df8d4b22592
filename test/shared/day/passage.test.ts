import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DayState, passagesOf } from '../../../shared/day/index.ts';
import { after, minutes, must } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

type Facts = DayState['tasks'];

const empty = new Telling().state;

/** Taps that nobody could have made in this order, too: what is read hangs on the taps alone. */
const step = fc.record({
  about: fc.nat({ max: handsInOrder.length - 1 }),
  startedMin: fc.option(fc.nat({ max: 900 })),
  tookMin: fc.option(fc.nat({ max: 200 })),
});
type Step = typeof step extends fc.Arbitrary<infer Value> ? Value : never;

function tapped(tasks: Facts, { about, startedMin, tookMin }: Step): Facts {
  const id = must(handsInOrder[about], 'a task');
  if (startedMin === null) return new Map([...tasks].filter(([other]) => other !== id));
  const at = (min: number) => ({ at: after(plan.built.origin, minutes(min)), by: null });
  const facts = {
    ...tasks.get(id),
    started: at(startedMin),
    finished: tookMin === null ? null : at(startedMin + tookMin),
  };
  return new Map(tasks).set(id, facts as never);
}

describe('when a task began and ended', () => {
  it('is the same whether read tap by tap or all at once', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 60 }), (steps) => {
        let tasks: Facts = new Map();
        const followed = { ...empty, plan: { ...plan } };
        for (const each of steps) {
          tasks = tapped(tasks, each);
          passagesOf({ ...followed, tasks });
        }
        const atOnce = passagesOf({ ...empty, plan: { ...plan }, tasks: new Map(tasks) });
        expect([...passagesOf({ ...followed, tasks })]).toEqual([...atOnce]);
      }),
      { numRuns: 40 },
    );
  });
});
