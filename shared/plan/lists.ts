import type { Catalogue, Mix } from '../catalogue/index.ts';
import type { Kilograms } from '../kernel/index.ts';
import { kilograms, must, seconds } from '../kernel/index.ts';
import type { MixLine, PullLine, TubLine } from './built.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { doseFor, mixesOf } from './tasks.ts';

/**
 * What to pull from the cooler, a line for each cut that is bought, and by when the first of it.
 */
export function pullList(batches: readonly OrderedBatch[], { cuts }: Catalogue): PullLine[] {
  const bought = batches.flatMap(({ batch }) => batch.bought ?? []);
  return [...new Set(bought)].map((id) => {
    const lines = batches.filter(({ batch }) => batch.bought === id);
    return {
      cut: id,
      name: must(
        cuts.find((cut) => cut.id === id),
        id,
      ).name,
      pieces: sum(lines.map(({ batch }) => batch.pieces)),
      weightKg: kilograms(sum(lines.map(({ batch }) => batch.rawKg))),
      byS: seconds(Math.min(...lines.map(({ batch }) => batch.beginByS))),
    };
  });
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
