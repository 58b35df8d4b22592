import type { Catalogue, Mix } from '../catalogue/index.ts';
import type { Kilograms, Seconds } from '../kernel/index.ts';
import { kilograms, seconds } from '../kernel/index.ts';
import type { OrderedBatch } from './batches.ts';
import type { MixLine, PullLine, TubLine } from './built.ts';
import { chainLength } from './path.ts';
import { doseFor, mixesOf } from './tasks.ts';

/** What to pull from the cooler, a line a cut, and by when the first of it. */
export function pullList(batches: readonly OrderedBatch[]): PullLine[] {
  const cuts = new Map(batches.map(({ order }) => [order.cut.id, order.cut]));
  return [...cuts.values()].map((cut) => {
    const lines = batches.filter(({ batch }) => batch.cut === cut.id);
    return {
      cut: cut.id,
      name: cut.name,
      pieces: sum(lines.map(({ batch }) => batch.pieces)),
      weightKg: kilograms(sum(lines.map(({ batch }) => batch.rawKg))),
      byS: seconds(Math.min(...lines.map(latestStart))),
    };
  });
}

/** When a batch must be begun if nothing is to wait and nothing to run over. */
function latestStart({ order, batch }: OrderedBatch): Seconds {
  return seconds(batch.neededS - chainLength(order.steps, batch.pieces));
}

/** What to mix for the day, made over by what each mix asks. */
export function mixList(batches: readonly OrderedBatch[], catalogue: Catalogue): MixLine[] {
  const doses = new Map<Mix, Kilograms>();
  for (const ordered of batches) {
    for (const mix of mixesOf(ordered, catalogue)) {
      doses.set(mix, kilograms((doses.get(mix) ?? 0) + doseFor(mix, ordered.batch)));
    }
  }
  return [...doses].map(([mix, doseKg]) => mixLine(mix, kilograms(doseKg * (1 + mix.overShare))));
}

/**
 * A mix scaled to a weight by its parts.
 * @example mixLine(rub, kilograms(0.2)).parts // parts 50, 30, 20 //=> 100 g, 60 g, 40 g
 */
export function mixLine(mix: Mix, weightKg: Kilograms): MixLine {
  const whole = sum(mix.parts.map(({ parts }) => parts));
  return {
    mix: mix.id,
    name: mix.name,
    weightKg,
    parts: mix.parts.map(({ ingredient, parts }) => ({
      ingredient,
      weightKg: kilograms((weightKg * parts) / whole),
    })),
    allergens: [...new Set(mix.parts.flatMap(({ allergens }) => allergens))],
  };
}

/** The tubs of trim that the batches are expected to leave, one line for each batch and tub. */
export function tubList(batches: readonly OrderedBatch[]): TubLine[] {
  return batches.flatMap(({ order, batch }) =>
    order.cut.tubs.map(({ id, name, share, goes }) => ({
      batch: batch.id,
      tub: id,
      name,
      weightKg: kilograms(batch.rawKg * share.typical),
      goes,
    })),
  );
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
