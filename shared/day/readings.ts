import type { Celsius, Instant } from '../kernel/index.ts';
import { celsius, instant, minutes } from '../kernel/index.ts';
import type { Command } from './command.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { ReadingPlace } from './event.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import { isLeap } from './probe.ts';
import type { DayState } from './state.ts';

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

/** Whether a thermometer in meat can have shown it. */
export const isPlausibleCore = (tempC: Celsius): boolean =>
  plausibleC.core.low <= tempC && tempC <= plausibleC.core.high;

function exists(index: PlanIndex, where: ReadingPlace): boolean {
  if (where.kind === 'core') return index.tasks.get(where.stay)?.work === 'place';
  return index.plan.kitchen.smokers.some((smoker) => smoker.id === where.smoker);
}

/** What there is to say of a reading that comes from elsewhere, before it is kept or not. */
export type ReadingFound =
  /** Kept. */
  | 'sound'
  | 'out-of-order'
  /** A probe that fell out: kept as it was sent, and believed by nobody. */
  | 'fell-out'
  /** Not kept. */
  | 'duplicate'
  | 'from-the-future'
  | 'before-the-day'
  | 'impossible'
  | 'unknown-place'
  | 'no-plan';

/** Clocks of two machines may differ by so much (judged). */
const CLOCKS_DIFFER_S = minutes(2);

/** Looks at a reading before it is kept: what it says, and of when, beside what is known. */
export function lookAtReading(
  state: DayState,
  { where, tempC, at }: { where: ReadingPlace; tempC: Celsius; at: Instant },
  now: Instant,
): ReadingFound {
  if (!state.plan) return 'no-plan';
  if (!exists(indexOf(state.plan), where)) return 'unknown-place';
  const { low, high } = plausibleC[where.kind];
  if (!(low <= tempC && tempC <= high)) return 'impossible';
  if (at > instant(now + CLOCKS_DIFFER_S * 1000)) return 'from-the-future';
  if (at < state.plan.built.origin) return 'before-the-day';
  const others = state.readings
    .filter((each) => isSamePlace(each.where, where))
    .sort((a, b) => a.at - b.at);
  if (others.some((each) => each.at === at)) return 'duplicate';
  const before = others.findLast((each) => each.at < at);
  if (where.kind === 'core' && before && isLeap(before, { at, tempC })) return 'fell-out';
  return others.some((each) => each.at > at) ? 'out-of-order' : 'sound';
}

const isSamePlace = (a: ReadingPlace, b: ReadingPlace): boolean =>
  a.kind === 'air'
    ? b.kind === 'air' && a.smoker === b.smoker
    : b.kind === 'core' && a.stay === b.stay;
