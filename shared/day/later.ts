import type { Seconds } from '../kernel/index.ts';
import { minutes, seconds } from '../kernel/index.ts';

/**
 * When a service counts as late, wherever that is said or acted on: from the first whole minute, as
 * nobody is “0 min late”. A call is made later than that, so as to be seldom (`view/alerts`).
 */
const LATE_S = minutes(1);

/** @example isLate(seconds(-59)) //=> false */
export const isLate = (inHandS: number): boolean => inHandS <= -LATE_S;

/** What a service has in hand as it is, and as it would be; null where nothing of it is left. */
type Service = { readonly beforeS: Seconds | null; readonly afterS: Seconds | null };

/** By how much a service that would be late would be later than it is; nought for any other. */
export function laterS({ beforeS, afterS }: Service): Seconds {
  if (afterS === null || !isLate(afterS)) return seconds(0);
  const byS = (beforeS ?? 0) - afterS;
  return seconds(isLate(-byS) ? byS : 0);
}

/**
 * Whether a way may be offered at all: one that makes a service later than leaving it be only if
 * another that was late holds by it.
 */
export function mayBeOffered(services: readonly Service[]): boolean {
  const holdsAgain = ({ beforeS, afterS }: Service) =>
    beforeS !== null && isLate(beforeS) && (afterS === null || !isLate(afterS));
  return services.every((each) => laterS(each) === 0) || services.some(holdsAgain);
}
