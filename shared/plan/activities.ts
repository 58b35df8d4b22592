import type { Step, StepOf } from '../catalogue/index.ts';
import { seconds, unreachable } from '../kernel/index.ts';
import type { Activity, Goal, GoalId, Length, Mode } from '../schedule/index.ts';
import type { Aim } from './built.ts';
import { handModes, teamsFor, workLength } from './hands.ts';
import { amountToKeep, needsToKeep, placesToKeep } from './keeping.ts';
import type { Frame } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { serveStep } from './path.ts';
import { stayLoads, stayModes } from './stays.ts';
import { tablesFor } from './tables.ts';
import { taskId } from './task-id.ts';

/** The steps of a batch as activities that the schedule can place; a stay is one for each load. */
export function activitiesOf(ordered: OrderedBatch, frame: Frame): Activity[] {
  const { order, batch } = ordered;
  return order.steps.flatMap(({ step }): Activity[] => {
    if (step.work === 'place') {
      return stayLoads(ordered, step, frame).map(({ id, pieces }) => ({
        id,
        modes: stayModes(ordered, step, frame, pieces),
      }));
    }
    return [
      {
        id: taskId(batch.id, step.id),
        modes: modesOf(step, ordered, frame),
        ...(step.work === 'serve' ? { releaseS: batch.neededS } : {}),
      },
    ];
  });
}

/** Where a plan of the batch should leave more time than it must. */
export function aimsOf({ order, batch }: OrderedBatch): Aim[] {
  return order.steps.flatMap(({ step }): Aim[] => {
    const activity = taskId(batch.id, step.id);
    if (step.work === 'wait' && step.usualS > step.atLeastS) {
      return [{ kind: 'lasts', activity, leastS: step.usualS }];
    }
    if (step.work === 'serve' && step.aheadS > 0) {
      return [{ kind: 'ready-ahead', activity, leastS: step.aheadS }];
    }
    return [];
  });
}

function modesOf(
  step: Exclude<Step, { work: 'place' }>,
  ordered: OrderedBatch,
  frame: Frame,
): Mode[] {
  const { order, batch, saleS } = ordered;
  switch (step.work) {
    case 'hands': {
      const wished = order.planned.hands[step.id];
      const teams = teamsFor(frame.kitchen, step, wished);
      return handModes(step, batch.pieces, teams, {
        tables: tablesFor(step, order, frame),
        wished,
      });
    }
    case 'fire':
      return [{ id: 'fire', length: workLength(step, batch.pieces), needs: [], states: [] }];
    case 'wait':
      return [waitMode(step, ordered, frame)];
    case 'serve':
      return [{ id: 'serve', length: lasting(saleS, saleS), needs: [], states: [] }];
    default:
      return unreachable(step);
  }
}

const lasting = (minS: number, maxS: number): Length => ({
  kind: 'wait',
  minS: seconds(minS),
  maxS: seconds(maxS),
});

function waitMode(step: StepOf<'wait'>, { order, batch }: OrderedBatch, { kitchen }: Frame): Mode {
  const { keep, atLeastS, atMostS } = step;
  const needs = keep
    ? needsToKeep(placesToKeep(kitchen, keep.in), amountToKeep(keep, order.cut, batch))
    : [];
  return { id: 'wait', length: lasting(atLeastS, atMostS), needs, states: [] };
}

/** The promise of a batch: its first portion stands ready when it is needed. */
export function goalOf({ order, batch }: OrderedBatch): Goal {
  return {
    id: batch.id as string as GoalId,
    activity: taskId(batch.id, serveStep(order.steps).id),
    end: 'start',
    dueS: batch.neededS,
    weight: batch.portions,
  };
}
