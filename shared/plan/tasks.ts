import type { Catalogue, Mix, Step, StepOf } from '../catalogue/index.ts';
import type { Kilograms } from '../kernel/index.ts';
import { kilograms, must, unreachable } from '../kernel/index.ts';
import type { Batch, Task } from './built.ts';
import { laidOf, weightsAlong } from './laid.ts';
import type { Frame } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { stationOf } from './station.ts';
import { stayLoads } from './stays.ts';
import { taskId } from './task-id.ts';

/** The steps of a batch as a person has them; a stay is a task for each of its rack loads. */
export function tasksOf(ordered: OrderedBatch, frame: Frame, catalogue: Catalogue): Task[] {
  const { order, batch } = ordered;
  const weights = weightsAlong(order, batch);
  return order.steps.flatMap(({ step }): Task[] => {
    const weightKg = must(weights.get(step.id), step.id);
    if (step.work === 'place') return loadTasks(step, ordered, frame, weightKg);
    return [
      {
        id: taskId(batch.id, step.id),
        ...said(step, batch, frame),
        pieces: batch.pieces,
        piece: (step.work === 'hands' ? step.piece : undefined) ?? order.cut.piece,
        ...(order.cut.trayHolds === undefined ? {} : { trayHolds: order.cut.trayHolds }),
        weightKg,
        ...(step.work === 'hands' ? handsDetail(step, batch, catalogue) : {}),
      },
    ];
  });
}

function loadTasks(
  stay: StepOf<'place'>,
  ordered: OrderedBatch,
  frame: Frame,
  weightKg: Kilograms,
): Task[] {
  const { order, batch } = ordered;
  const { piece, lengthM, widthM } = laidOf(order.cut, stay);
  const loads = stayLoads(ordered, stay, frame);
  const pieces = loads.reduce((sum, load) => sum + load.pieces, 0);
  return loads.map((load) => ({
    id: load.id,
    ...said(stay, batch, frame),
    pieces: load.pieces,
    piece,
    weightKg: kilograms((weightKg * load.pieces) / pieces),
    loads: [load.pieces],
    lies: { lengthM, widthM },
  }));
}

/** What is said of a step, whoever does it. */
function said(step: Step, batch: Batch, { kitchen }: Frame) {
  return {
    batch: batch.id,
    step: step.id,
    work: step.work === 'serve' ? ('wait' as const) : step.work,
    title: step.title,
    ...(step.short ? { short: step.short } : {}),
    ...(step.mind ? { mind: step.mind } : {}),
    ...(step.caution ? { caution: step.caution } : {}),
    station: stationOf(kitchen, step.bench).id,
  };
}

function handsDetail(step: StepOf<'hands'>, batch: Batch, catalogue: Catalogue) {
  const mix = catalogue.mixes.find(({ id }) => id === step.mix);
  return {
    ...(mix ? { mix: { mix: mix.id, name: mix.name, weightKg: doseFor(mix, batch) } } : {}),
    ...(step.check ? { check: step.check } : {}),
    ...(step.byWeight ? { byWeight: true as const } : {}),
  };
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
