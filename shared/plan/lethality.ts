import type { Step } from '../catalogue/index.ts';
import { minutes, must } from '../kernel/index.ts';
import type { Frame, Order } from './order.ts';

/**
 * As long as somebody reads a thermometer that has come to rest: what a check that names no time
 * has been held for (our choice).
 */
export const A_READING_S = minutes(0.5);

/** Whether the food is past its lethality step once this step is done. */
export function isCooked(step: Step, { kinds }: Order, { limits }: Frame): boolean {
  if (step.work !== 'hands' || step.check?.coreAtLeastC === undefined) return false;
  if ((step.check.of ?? 'the cook') !== 'the cook') return false;
  const { coreAtLeastC: coreC, heldS = A_READING_S } = step.check;
  const kind = must(kinds.get(step.id), step.id);
  return limits.endTemperature({ kind, coreC, heldS }) === null;
}
