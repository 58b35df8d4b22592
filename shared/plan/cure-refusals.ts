import type { Catalogue } from '../catalogue/index.ts';
import { kilograms, must } from '../kernel/index.ts';
import { ingoing } from './ingoing.ts';
import { type Frame, type Order, ofDish } from './order.ts';
import type { PlanRefusal } from './refusal.ts';
import { doseFor } from './tasks.ts';

/**
 * Where a cure of a dish lies outside the limits: it stops at the published figure, and is for a
 * kitchen that has its variance. Per piece, so that it holds for a batch of any size.
 */
export function cureBreaches(order: Order, frame: Frame, catalogue: Catalogue): PlanRefusal[] {
  const { cut, steps } = order;
  const hasVariance = frame.kitchen.variances?.some((each) => each.for === 'curing') ?? false;
  return steps.flatMap(({ step }) => {
    if (step.work !== 'hands' || step.mix === undefined) return [];
    const mix = must(
      catalogue.mixes.find(({ id }) => id === step.mix),
      step.mix,
    );
    const greenKg = kilograms(cut.weightKg.typical * cut.yields.trim.typical);
    const into = ingoing(mix, { doseKg: doseFor(mix, { pieces: 1, trimmedKg: greenKg }), greenKg });
    if (into === null) return [];
    const breaches = [frame.limits.cure(into), hasVariance ? null : frame.limits.curing()];
    const about = { ...ofDish(order), step: step.title };
    return breaches.flatMap((breach): PlanRefusal[] =>
      breach === null ? [] : [{ rule: 'limit-broken', ...about, ...breach }],
    );
  });
}
