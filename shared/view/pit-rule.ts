import type { Instant } from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import type { SmokerDrawing } from './view.ts';

/**
 * The stretch of time that the rules under the racks show, the same for all, so that they can be
 * compared.
 */
export type PitRule = {
  readonly from: Instant;
  readonly to: Instant;
  readonly hours: readonly Instant[];
};

const HOUR_MS = 3_600_000;
const BEHIND_MS = HOUR_MS;
const LEAST_MS = 6 * HOUR_MS;
/**
 * Beyond this the ticks say nothing any more; what ends later runs off the rule, and its words say
 * when.
 */
const MOST_MS = 16 * HOUR_MS;

/** From an hour ago until what is in the smokers has ended, in whole hours. */
export function pitRule(smokers: readonly SmokerDrawing[], now: Instant): PitRule {
  const loads = smokers.flatMap(({ racks }) => racks.flatMap((rack) => rack.loads));
  const ends = loads.filter(({ here }) => here).map(({ next, outAt }) => next?.highAt ?? outAt);
  const from = Math.floor((now - BEHIND_MS) / HOUR_MS) * HOUR_MS;
  const last = Math.ceil(Math.max(now, ...ends) / HOUR_MS) * HOUR_MS;
  const to = Math.min(Math.max(last, from + LEAST_MS), from + MOST_MS);
  const hours = Array.from({ length: (to - from) / HOUR_MS + 1 }, (_, i) =>
    instant(from + i * HOUR_MS),
  );
  return { from: instant(from), to: instant(to), hours };
}

/**
 * Where an instant lies on the rule, from 0 to 1; what lies off it is at its end.
 * @example shareOf(rule, rule.from) //=> 0
 */
export function shareOf({ from, to }: PitRule, at: Instant): number {
  return Math.min(1, Math.max(0, (at - from) / (to - from)));
}
