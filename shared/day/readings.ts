import type { Celsius } from '../kernel/index.ts';
import { celsius } from '../kernel/index.ts';
import type { Command } from './command.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { ReadingPlace } from './event.ts';
import type { PlanIndex } from './plan-index.ts';

/**
 * What a working thermometer can show in a kitchen (common practice, no source): colder is a blast
 * chiller's air, hotter is a firebox; a core is meat, which is neither far below frozen nor above
 * boiling water.
 */
const plausibleC = {
  air: { low: celsius(-40), high: celsius(450) },
  core: { low: celsius(-30), high: celsius(105) },
} as const satisfies Record<ReadingPlace['kind'], unknown>;

/**
 * A reading is kept as it was taken, unless no thermometer could have shown it or there is no such
 * place.
 */
export function decideReading(
  index: PlanIndex,
  { where, tempC }: Extract<Command, { kind: 'reading' }>,
): Decision {
  if (!exists(index, where)) return refuse({ rule: 'unknown-place' });
  const { low, high } = plausibleC[where.kind];
  if (!(low <= tempC && tempC <= high)) {
    return refuse({ rule: 'impossible-temperature', tempC });
  }
  return happen({ kind: 'temperatureRead', where, tempC });
}

/** Whether a thermometer in a smoker can have shown it. */
export const isPlausibleAir = (tempC: Celsius): boolean =>
  plausibleC.air.low <= tempC && tempC <= plausibleC.air.high;

function exists(index: PlanIndex, where: ReadingPlace): boolean {
  if (where.kind === 'core') return index.tasks.get(where.stay)?.work === 'place';
  return index.plan.kitchen.smokers.some((smoker) => smoker.id === where.smoker);
}
