import type { BatchId, Kilograms, TaskId, Text } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';
import { impossibleAmount } from './came-amounts.ts';
import type { CommandHead } from './command.ts';
import { type Decision, happen, refuse } from './decision.ts';
import { begunAt, drawsOf } from './draws.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { type TubIntent, tubKey } from './tub-fact.ts';

/** A tub of trim beside the work that fills it. */
export type TubStanding = {
  readonly tub: string;
  readonly name: Text;
  /** As the plan reckons it, or as the scale showed it. */
  readonly weightKg: Kilograms;
  readonly isWeighed: boolean;
  /** No more can be in it: what the batch weighed raw, less what its other tubs showed. */
  readonly mostKg: Kilograms;
};

/** The tubs that are full once this task is done; none of a task that ends no trimming. */
export function tubsAfter(state: DayState, index: PlanIndex, id: TaskId): readonly TubStanding[] {
  const filled = index.tubsAfter.get(id) ?? [];
  return filled.map(({ batch, tub, name, weightKg }) => {
    const shownKg = state.happened.tubs.get(tubKey(batch, tub))?.weightKg;
    return {
      ...{ tub, name, weightKg: shownKg ?? weightKg, isWeighed: shownKg !== undefined },
      mostKg: kilograms(rawKg(state, index, batch) - othersKg(state, index, { batch, tub })),
    };
  });
}

/** A tub of trim goes over the scale once: what it shows rules over what was reckoned. */
export function decideTub(
  state: DayState,
  index: PlanIndex,
  { batch, tub, weightKg }: CommandHead & TubIntent,
): Decision {
  const { tubs } = index.plan.built;
  if (!tubs.some((each) => each.batch === batch && each.tub === tub)) {
    return refuse({ rule: 'not-of-this-day' });
  }
  if (begunAt(state, batch) === null) return refuse({ rule: 'not-started' });
  const impossible = impossibleAmount(1, weightKg);
  if (impossible) return impossible;
  // No more comes off the pieces than they weighed.
  if (weightKg + othersKg(state, index, { batch, tub }) > rawKg(state, index, batch)) {
    return refuse({ rule: 'impossible-amount', weightKg });
  }
  return happen({ kind: 'tubWeighed', batch, tub, weightKg });
}

/** What the other tubs of the batch showed on the scale. */
function othersKg(
  { happened }: DayState,
  { plan }: PlanIndex,
  { batch, tub }: { readonly batch: BatchId; readonly tub: string },
): number {
  const others = plan.built.tubs.filter((each) => each.batch === batch && each.tub !== tub);
  return others.reduce(
    (sum, each) => sum + (happened.tubs.get(tubKey(batch, each.tub))?.weightKg ?? 0),
    0,
  );
}

function rawKg(state: DayState, index: PlanIndex, batch: BatchId): number {
  const drawn = drawsOf(state).filter((draw) => draw.batch === batch);
  if (drawn.length === 0) return index.batches.get(batch)?.rawKg ?? 0;
  return drawn.reduce((sum, { weightKg }) => sum + weightKg, 0);
}
