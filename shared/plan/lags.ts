import type { ChosenStep } from '../catalogue/index.ts';
import { chosenLimits, spansOf } from '../catalogue/index.ts';
import type { StepId, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { Lag } from '../schedule/index.ts';
import type { Frame } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { stayLoads } from './stays.ts';
import { taskId } from './task-id.ts';

/** How the steps of a batch follow one another, and how far apart they may come. */
export function lagsOf(ordered: OrderedBatch, frame: Frame): Lag[] {
  const { order } = ordered;
  const ids = (step: StepId) => activitiesFor(step, ordered, frame);
  const limits = chosenLimits(order.route, order.chosen).flatMap(({ from, to, ...limit }) =>
    pairs(ids(from.step), ids(to.step)).map(
      ([first, second]): Lag => ({
        from: { activity: first, end: from.end },
        to: { activity: second, end: to.end },
        maxS: limit.atMostS,
        reason: limit.reason,
      }),
    ),
  );
  return [
    ...order.steps.flatMap((chosen) => stepLags(chosen, order.steps, ids)),
    ...limits,
    ...donorLags(ordered),
  ];
}

/** A stay is an activity for each rack load; any other step is one. */
function activitiesFor(id: StepId, ordered: OrderedBatch, frame: Frame): readonly TaskId[] {
  const { step } = chosenStep(ordered.order.steps, id);
  if (step.work === 'place') return stayLoads(ordered, step, frame).map((load) => load.id);
  return [taskId(ordered.batch.id, id)];
}

type Ids = (step: StepId) => readonly TaskId[];

function stepLags({ step, after }: ChosenStep, steps: readonly ChosenStep[], ids: Ids): Lag[] {
  const spans = spansOf(step);
  if (spans) {
    return ids(step.id).flatMap((activity) =>
      (['from', 'to'] as const).flatMap((which) =>
        ids(spans[which].step).map((tied) => ({
          from: { activity: tied, end: spans[which].end },
          to: { activity, end: which === 'from' ? 'start' : 'end' } as const,
          minS: seconds(0),
          maxS: seconds(0),
          reason: 'stay',
        })),
      ),
    );
  }
  return after.flatMap((before) => {
    // A wait is the gap between two steps: it begins when the one ends and ends when the other
    // begins. What is on the fire cooks from when hands have left it there.
    const isLeftToCook = step.work === 'fire' && after.length === 1;
    const isGap = step.work === 'wait' || chosenStep(steps, before).step.work === 'wait';
    const touches = isGap || isLeftToCook;
    return pairs(ids(before), ids(step.id)).map(([first, second]) => ({
      from: { activity: first, end: 'end' as const },
      to: { activity: second, end: 'start' as const },
      minS: seconds(0),
      ...(touches ? { maxS: seconds(0) } : {}),
      reason: 'step',
    }));
  });
}

/** What is made of another's trim begins when that lies in its tub, and not too long after. */
function donorLags({ order, batch, donors }: OrderedBatch): Lag[] {
  const first = taskId(batch.id, must(order.steps[0], 'a step').step.id);
  return donors.map(({ batch: donor, trimmedBy, keepsS }) => ({
    from: { activity: taskId(donor, trimmedBy), end: 'end' },
    to: { activity: first, end: 'start' },
    minS: seconds(0),
    ...(keepsS === undefined ? {} : { maxS: keepsS }),
    reason: 'trim',
  }));
}

const chosenStep = (steps: readonly ChosenStep[], id: StepId): ChosenStep =>
  must(
    steps.find(({ step }) => step.id === id),
    id,
  );

const pairs = <Item>(first: readonly Item[], second: readonly Item[]) =>
  first.flatMap((a) => second.map((b) => [a, b] as const));
