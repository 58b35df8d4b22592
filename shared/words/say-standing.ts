import type { Instant, Seconds } from '../kernel/index.ts';
import type { ServiceStanding, SpreadView } from '../view/index.ts';
import { isLate } from '../view/index.ts';
import { clockTime, durationWords, wholeMinutes } from './amounts.ts';
import { deskWords } from './desk-words.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';
import { clockAhead } from './say-when.ts';

/** A service in the head of the desk, part by part. */
export type StandingSaid = {
  readonly service: string;
  readonly stands: string;
  /** Between what it will have in hand in eight of ten cases. */
  readonly between: string | null;
  /** What is left if no cook takes longer than usual. */
  readonly planned: string | null;
  readonly isLate: boolean;
};

/**
 * How a service stands: what is likely first, since each of many cooks may run long, and one that
 * is short gives little back. Null once it is closed and waits for nothing.
 * @example sayStanding(standing, now, say)?.stands //=> 'likely 40 min late'
 */
export function sayStanding(
  { name, opensAt, closesAt, inHandS, spread }: ServiceStanding,
  now: Instant,
  say: Say,
): StandingSaid | null {
  const words = deskWords[say.language].standing;
  const isOpen = now >= opensAt;
  const called = textIn(name, say);
  const service = isOpen
    ? words.open(called, clockTime(closesAt, say))
    : words.opens(called, clockAhead(opensAt, now, say));
  if (inHandS === null) {
    if (now >= closesAt) return null;
    return { service, stands: words.ready, between: null, planned: null, isLate: false };
  }
  const inHand = (s: Seconds) => sayInHandS(s, say.language);
  const likelyS = spread ? spread.likelyS : inHandS;
  const doubted = likelyS === null ? words.never : spread && words.likely(inHand(likelyS));
  const stands = doubted ?? inHand(inHandS);
  return {
    service,
    stands: isOpen ? words.toCome(stands) : stands,
    between: spread && sayBetween(spread, say.language),
    planned: spread && words.planned(inHand(inHandS)),
    isLate: likelyS === null || isLate(likelyS),
  };
}

function sayInHandS(inHandS: Seconds, language: Language): string {
  const words = deskWords[language].standing;
  const minutes = wholeMinutes(inHandS);
  if (minutes === 0) return words.nothing;
  return minutes > 0 ? words.inHand(durationWords(inHandS)) : words.short(durationWords(inHandS));
}

/** Of what as good as never comes there is nothing to be said beside that. */
function sayBetween({ lowS, highS }: SpreadView, language: Language): string | null {
  const words = deskWords[language].standing;
  if (highS === null) return null;
  const high = sayInHandS(highS, language);
  return lowS === null ? words.atBest(high) : words.between(sayInHandS(lowS, language), high);
}
