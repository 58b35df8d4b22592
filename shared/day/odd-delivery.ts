import type { Celsius, Kilograms, LocalDay, Text } from '../kernel/index.ts';
import { daysBetween, kilograms, toFahrenheit } from '../kernel/index.ts';

/** What is seldom so of what came: it is kept once somebody says that it is so. */
export type Odd =
  | ({ readonly kind: 'weight'; readonly usualKg: Kilograms } & Amount)
  | { readonly kind: 'many'; readonly pieces: number; readonly listed: number }
  | { readonly kind: 'nothing'; readonly cut: Text }
  /** Of a number so low that it was likely read on the other scale. */
  | { readonly kind: 'frozen'; readonly shownF: number }
  | { readonly kind: 'no-temp' }
  | { readonly kind: 'far-use-by'; readonly useBy: LocalDay }
  | { readonly kind: 'no-use-by' };

type Amount = { readonly pieces: number; readonly weightKg: Kilograms };

type Label = { readonly tempC: Celsius | null; readonly useBy: LocalDay | null };

/** What is known of a cut before any of it comes. */
type Usual = {
  readonly eachKg: number;
  /** As many as the pull list asks for; null where it asks for none. */
  readonly listed: number | null;
};

type Known = Usual & { readonly temperature: '°F' | '°C'; readonly today: LocalDay };

/** What is odd of a lot, in the order in which it is typed; nothing where it is like any other. */
export function oddLot(lot: Amount & Label, known: Known): Odd[] {
  return [...oddAmount(lot, known), ...oddTemp(lot.tempC, known), ...oddUseBy(lot.useBy, known)];
}

/** What is odd of what came against a line of the pull list. */
export function oddDelivery(came: Amount, line: Amount & { readonly name: Text }): Odd[] {
  if (came.pieces === 0) return [{ kind: 'nothing', cut: line.name }];
  return oddAmount(came, { eachKg: line.weightKg / line.pieces, listed: line.pieces });
}

/** A piece that is out by more than this many times was mistyped sooner than weighed (judged). */
const MOST_TIMES = 3;
/** A kitchen that buys for its whole week takes in seven times what it pulls today (judged). */
const MOST_DAYS_OF_IT = 10;

function oddAmount({ pieces, weightKg }: Amount, { eachKg, listed }: Usual): Odd[] {
  if (pieces === 0) return [];
  const odd: Odd[] = [];
  const times = eachKg > 0 ? weightKg / pieces / eachKg : 1;
  if (times > MOST_TIMES || times < 1 / MOST_TIMES) {
    odd.push({ kind: 'weight', pieces, weightKg, usualKg: kilograms(eachKg) });
  }
  if (listed !== null && pieces > listed * MOST_DAYS_OF_IT) {
    odd.push({ kind: 'many', pieces, listed });
  }
  return odd;
}

/** Fresh meat comes no colder (judged). */
const FROZEN_C = -2;
/** What comes cold comes at this or below: Food Code, 3-202.11(A), 2009 text. */
const RECEIVED_AT_MOST_C = 5;

/**
 * A number of degrees Fahrenheit that is below freezing: 15 read off a thermometer that shows
 * Celsius is meat that came too warm, and would go in as good. What is cold enough on either scale
 * is not odd.
 */
function oddTemp(tempC: Celsius | null, { temperature }: Known): Odd[] {
  if (tempC === null) return [{ kind: 'no-temp' }];
  if (temperature !== '°F' || tempC >= FROZEN_C) return [];
  const shownF = Math.round(toFahrenheit(tempC));
  return shownF > RECEIVED_AT_MOST_C ? [{ kind: 'frozen', shownF }] : [];
}

/** Frozen meat is seldom good for longer; a year that was mistyped is never past (judged). */
const FAR_DAYS = 366;

function oddUseBy(useBy: LocalDay | null, { today }: Known): Odd[] {
  if (useBy === null) return [{ kind: 'no-use-by' }];
  return daysBetween(today, useBy) > FAR_DAYS ? [{ kind: 'far-use-by', useBy }] : [];
}
