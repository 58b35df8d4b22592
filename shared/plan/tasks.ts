import type { Catalogue, Mix, Step, StepOf } from '../catalogue/index.ts';
import type { Kilograms } from '../kernel/index.ts';
import { kilograms, must, unreachable } from '../kernel/index.ts';
import { taskId } from './activities.ts';
import type { OrderedBatch } from './batches.ts';
import type { Batch, Task } from './built.ts';
import { fitsOf } from './lacks.ts';
import type { Frame } from './order.ts';
import { rackLoads } from './rack-fit.ts';
import { stationOf } from './station.ts';

/** The steps of a batch as a person has them. */
export function tasksOf(ordered: OrderedBatch, frame: Frame, catalogue: Catalogue): Task[] {
  const { order, batch } = ordered;
  let weightKg = batch.rawKg;
  return order.steps.map(({ step }) => {
    const task = taskOf(step, ordered, frame, catalogue, weightKg);
    if (step.leaves) weightKg = weightAfter(step.leaves, batch);
    return task;
  });
}

function taskOf(
  step: Step,
  ordered: OrderedBatch,
  frame: Frame,
  catalogue: Catalogue,
  weightKg: Kilograms,
): Task {
  const { order, batch } = ordered;
  return {
    id: taskId(batch.id, step.id),
    batch: batch.id,
    step: step.id,
    work: step.work === 'serve' ? 'wait' : step.work,
    title: step.title,
    ...(step.short ? { short: step.short } : {}),
    ...(step.mind ? { mind: step.mind } : {}),
    ...(step.caution ? { caution: step.caution } : {}),
    pieces: batch.pieces,
    piece: order.cut.piece,
    weightKg,
    station: stationOf(frame.kitchen, step.bench).id,
    ...(step.work === 'hands' ? handsDetail(step, batch, catalogue) : {}),
    ...(step.work === 'place'
      ? { loads: rackLoads(fitsOf(order, frame, step), batch.pieces) }
      : {}),
  };
}

function handsDetail(step: StepOf<'hands'>, batch: Batch, catalogue: Catalogue) {
  const mix = catalogue.mixes.find(({ id }) => id === step.mix);
  return {
    ...(mix ? { mix: { mix: mix.id, name: mix.name, weightKg: doseFor(mix, batch) } } : {}),
    ...(step.check ? { check: step.check } : {}),
  };
}

function weightAfter(leaves: NonNullable<Step['leaves']>, batch: Batch): Kilograms {
  switch (leaves) {
    case 'trimmed':
      return batch.trimmedKg;
    case 'cooked':
      return batch.cookedKg;
    case 'served':
      return batch.servedKg;
    default:
      return unreachable(leaves);
  }
}

/** How much of a mix a batch takes, without what is made over. */
export function doseFor(
  { dose }: Pick<Mix, 'dose'>,
  batch: Pick<Batch, 'pieces' | 'trimmedKg'>,
): Kilograms {
  switch (dose.of) {
    case 'trimmed weight':
      return kilograms(batch.trimmedKg * dose.share);
    case 'piece':
      return kilograms(batch.pieces * dose.volumeL * dose.litreWeighsKg);
    default:
      return unreachable(dose);
  }
}

/** The mixes that a batch takes, each once. */
export function mixesOf({ order }: OrderedBatch, catalogue: Catalogue): Mix[] {
  const ids = order.steps.flatMap(({ step }) =>
    step.work === 'hands' && step.mix ? [step.mix] : [],
  );
  return [...new Set(ids)].map((id) =>
    must(
      catalogue.mixes.find((mix) => mix.id === id),
      id,
    ),
  );
}
