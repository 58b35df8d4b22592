import type { BatchId } from '../kernel/index.ts';
import { impossibleAmount } from './came-amounts.ts';
import type { CommandHead } from './command.ts';
import { type Decision, happen, refuse } from './decision.ts';
import { begunAt, drawsOf } from './draws.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { type TubIntent, tubKey } from './tub-fact.ts';

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
  const others = tubs.filter((each) => each.batch === batch && each.tub !== tub);
  const weighedKg = others.reduce(
    (sum, each) => sum + (state.happened.tubs.get(tubKey(batch, each.tub))?.weightKg ?? 0),
    weightKg as number,
  );
  if (weighedKg > rawKg(state, index, batch)) {
    return refuse({ rule: 'impossible-amount', weightKg });
  }
  return happen({ kind: 'tubWeighed', batch, tub, weightKg });
}

function rawKg(state: DayState, index: PlanIndex, batch: BatchId): number {
  const drawn = drawsOf(state).filter((draw) => draw.batch === batch);
  if (drawn.length === 0) return index.batches.get(batch)?.rawKg ?? 0;
  return drawn.reduce((sum, { weightKg }) => sum + weightKg, 0);
}
