import type { ChosenStep, Step, StepOf } from '../catalogue/index.ts';
import { chosenLimits, spansOf } from '../catalogue/index.ts';
import type { StepId, TaskId } from '../kernel/index.ts';
import { must, seconds, unreachable } from '../kernel/index.ts';
import type { Activity, Goal, GoalId, Lag, Length, Mode, ResourceId } from '../schedule/index.ts';
import type { OrderedBatch } from './batches.ts';
import type { Aim } from './built.ts';
import { handModes, teamsFor, workLength } from './hands.ts';
import { amountToKeep, needsToKeep, placesToKeep } from './keeping.ts';
import { fitsOf } from './lacks.ts';
import type { Frame } from './order.ts';
import { serveStep } from './path.ts';
import { holdsLoads, loadOn, rackLoads } from './rack-fit.ts';
import { fireState, resourceId } from './resources.ts';
import { stationOf } from './station.ts';

/** The schedule's name of a step of a batch. @example taskId('ribs-1', 'rub') //=> 'ribs-1/rub' */
export function taskId(batch: string, step: string): TaskId {
  return `${batch}/${step}` as TaskId;
}

/** The steps of a batch as activities that the schedule can place. */
export function activitiesOf(ordered: OrderedBatch, frame: Frame): Activity[] {
  const { order, batch } = ordered;
  return order.steps.map(({ step }) => ({
    id: taskId(batch.id, step.id),
    modes: modesOf(step, ordered, frame),
    ...(step.work === 'serve' ? { releaseS: batch.neededS } : {}),
  }));
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

function modesOf(step: Step, ordered: OrderedBatch, frame: Frame): Mode[] {
  const { order, batch, saleS } = ordered;
  switch (step.work) {
    case 'hands': {
      const wished = order.planned.hands[step.id];
      const teams = teamsFor(frame.kitchen, step, wished);
      return handModes(step, batch.pieces, teams, { table: tableFor(step, frame), wished });
    }
    case 'fire':
      return [{ id: 'fire', length: workLength(step, batch.pieces), needs: [], states: [] }];
    case 'wait':
      return [waitMode(step, ordered, frame)];
    case 'place':
      return stayModes(step, ordered, frame);
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

function tableFor({ table, bench }: StepOf<'hands'>, { kitchen }: Frame): ResourceId | null {
  const station = stationOf(kitchen, bench);
  return table && station.tables > 0 ? resourceId({ kind: 'table', station: station.id }) : null;
}

function waitMode(step: StepOf<'wait'>, { order, batch }: OrderedBatch, { kitchen }: Frame): Mode {
  const { keep, atLeastS, atMostS } = step;
  const needs = keep
    ? needsToKeep(placesToKeep(kitchen, keep.in), amountToKeep(keep, order.cut, batch))
    : [];
  return { id: 'wait', length: lasting(atLeastS, atMostS), needs, states: [] };
}

/**
 * The stay of a batch in its slots: one way for each smoker that can take all of its rack loads at
 * the set temperature. What happens meanwhile decides how long it lasts.
 */
function stayModes(stay: StepOf<'place'>, { order, batch }: OrderedBatch, frame: Frame): Mode[] {
  const fits = fitsOf(order, frame, stay);
  const loads = rackLoads(fits, batch.pieces);
  return fits
    .filter((fit) => holdsLoads(fit, loads))
    .map((fit) => ({
      id: fit.smoker.id,
      length: lasting(0, frame.horizonS),
      needs: loads.map((pieces) => {
        const { areaCm2, slots } = loadOn(fit, pieces);
        const oneOf = slots.map((slot) => resourceId({ kind: 'slot', slot }));
        return { role: 'slot', amount: areaCm2, oneOf };
      }),
      states: [
        {
          resource: resourceId({ kind: 'fire', smoker: fit.smoker.id }),
          state: fireState(stay.setC),
        },
      ],
    }));
}

/** How the steps of a batch follow one another, and how far apart they may come. */
export function lagsOf({ order, batch }: OrderedBatch): Lag[] {
  const id = (step: StepId) => taskId(batch.id, step);
  const limits = chosenLimits(order.route, order.chosen).map(
    ({ from, to, atMostS, reason }): Lag => ({
      from: { activity: id(from.step), end: from.end },
      to: { activity: id(to.step), end: to.end },
      maxS: atMostS,
      reason,
    }),
  );
  return [...order.steps.flatMap((chosen) => stepLags(chosen, order.steps, id)), ...limits];
}

function stepLags(
  { step, after }: ChosenStep,
  steps: readonly ChosenStep[],
  id: (step: StepId) => TaskId,
): Lag[] {
  const spans = spansOf(step);
  if (spans) {
    return (['from', 'to'] as const).map((which) => ({
      from: { activity: id(spans[which].step), end: spans[which].end },
      to: { activity: id(step.id), end: which === 'from' ? 'start' : 'end' },
      minS: seconds(0),
      maxS: seconds(0),
      reason: 'stay',
    }));
  }
  return after.map((before) => {
    const previous = must(
      steps.find((other) => other.step.id === before),
      before,
    ).step;
    // A wait is the gap between two steps: it begins when the one ends and ends when the other
    // begins.
    const touches = step.work === 'wait' || previous.work === 'wait';
    return {
      from: { activity: id(before), end: 'end' },
      to: { activity: id(step.id), end: 'start' },
      minS: seconds(0),
      ...(touches ? { maxS: seconds(0) } : {}),
      reason: 'step',
    };
  });
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
