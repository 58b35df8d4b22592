import type { StepOf } from '../catalogue/index.ts';
import type { TaskId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Mode, Need } from '../schedule/index.ts';
import { fitsOf } from './lacks.ts';
import { laidCount } from './laid.ts';
import type { Frame } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { type Fit, holdsLoads, type RackFit, rackLoads, shareOf } from './rack-fit.ts';
import { fireState, resourceId } from './resources.ts';
import { taskId } from './task-id.ts';

/** One rack load of a batch: it can go to another rack alone. */
export type StayLoad = { readonly id: TaskId; readonly pieces: number };

/**
 * The rack loads of a batch during a stay. A batch on one rack has one, named after the step; of
 * several each has its number.
 */
export function stayLoads(
  { order, batch }: OrderedBatch,
  stay: StepOf<'place'>,
  frame: Frame,
): StayLoad[] {
  const loads = rackLoads(fitsOf(order, frame, stay), laidCount(order, stay, batch.pieces));
  const name = (index: number) => (loads.length === 1 ? stay.id : `${stay.id}-${index + 1}`);
  return loads.map((pieces, index) => ({ id: taskId(batch.id, name(index)), pieces }));
}

/**
 * The ways a rack load can lie: one for each rack of each smoker that can take the whole batch at
 * the set temperature. What happens meanwhile decides how long it lasts.
 */
export function stayModes(
  { order, batch }: OrderedBatch,
  stay: StepOf<'place'>,
  frame: Frame,
  pieces: number,
): Mode[] {
  const fits = fitsOf(order, frame, stay);
  const loads = rackLoads(fits, laidCount(order, stay, batch.pieces));
  return fits
    .filter((fit) => holdsLoads(fit, loads))
    .flatMap((fit) => fit.racks.flatMap((rack) => modeOn(fit, rack, pieces, frame)));
}

function modeOn(fit: Fit, rack: RackFit, pieces: number, { horizonS }: Frame): Mode[] {
  const share = shareOf(rack, pieces);
  if (share === null) return [];
  const { slot } = rack;
  const need = (role: 'slot' | 'load', amount: number): Need => ({
    role,
    amount,
    oneOf: [resourceId({ kind: role, slot })],
  });
  return [
    {
      id: slot,
      length: { kind: 'wait', minS: seconds(0), maxS: horizonS },
      needs: [need('slot', share.areaCm2), need('load', share.weightG)],
      states: [
        {
          resource: resourceId({ kind: 'fire', smoker: fit.smoker.id }),
          state: fireState(fit.fireC),
        },
      ],
    },
  ];
}
