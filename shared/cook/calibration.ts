import { type Seconds, seconds } from '../kernel/index.ts';
import type { Target } from './piece.ts';
import { quantilesOf, type Weighted, weightOf } from './quantiles.ts';
import type { WrapName } from './rooms.ts';

/**
 * What an ensemble says of a target by itself: the median of the members that pass it, and how
 * many never do.
 */
export type Raw = { readonly p50S: Seconds; readonly never: number };

/**
 * What was foreseen of a piece whose cook is over, and how it came: from the forecasts that were
 * made while it cooked, as they were before any calibration.
 */
export type Outcome = {
  /** Forecasts of one piece are no independent witnesses. */
  readonly cookId: string;
  readonly target: Pick<Target, 'tempC' | 'way'>;
  /** How it was, or was meant to be, wrapped. */
  readonly wrap: WrapName;
  /** Since it went in. */
  readonly madeAtS: Seconds;
  readonly raw: Raw;
  /** Nothing where it never passed, as on a fire that went out. */
  readonly passedS: Seconds | undefined;
};

/** A kitchen is known from so many finished cooks on. */
export const COOKS_TO_BE_KNOWN = 30;

/**
 * Near the end a minute is no longer a share: errors are told in the logarithm of the time left
 * and this.
 */
const SHIFT_S = 1200;

/**
 * Outcomes count the more, the nearer to the same share of the way to their target they were made,
 * the nearer alike sure of ever passing it, the nearer the target, and wrapped alike.
 */
const NEAR_SHARE = 0.08;
const NEAR_NEVER = 0.25;
const NEAR_K = 10;
const OTHER_WRAP = 0.1;

/**
 * Cooks wrapped otherwise stand in while there are few of its own. Together they never count for
 * more than one: they miss by other amounts, so that many of them would make a range of another
 * wrap's width.
 */
const OTHER_WRAPS_AT_MOST = 1;

/**
 * The next cook is as likely as any before to fall beyond all of them, on either side. For that the
 * ensemble's own spread counts as well, as one outcome and a half since part of it lies within. It
 * is blown up: models think too well of themselves (both judged).
 */
const OWN_WEIGHT = 1.5;
const OWN_INFLATION = 1.35;

const scaled = (leftS: number) => Math.log(Math.max(leftS, 0) + SHIFT_S);
const unscaled = (value: number) => Math.max(0, Math.exp(value) - SHIFT_S);

/** How many finished cooks a record is of. */
export const cooksIn = (outcomes: readonly Outcome[]): number =>
  new Set(outcomes.map(({ cookId }) => cookId)).size;

/** Whether the kitchen has finished cooks enough for its forecasts to be called its own. */
export const isKnown = (outcomes: readonly Outcome[]): boolean =>
  cooksIn(outcomes) >= COOKS_TO_BE_KNOWN;

/**
 * What the passages of an ensemble's members say by themselves; nothing where none of them
 * passes.
 */
export function rawOf(passagesS: readonly Weighted[]): Raw | undefined {
  const finite = passagesS.filter(({ value }) => Number.isFinite(value));
  const [p50S] = quantilesOf(finite, [0.5]);
  if (p50S === undefined || Number.isNaN(p50S)) return undefined;
  return { p50S: seconds(Math.round(p50S)), never: 1 - weightOf(finite) / weightOf(passagesS) };
}

/** What a forecast is about, and the record it is made by. */
type Now = Pick<Outcome, 'target' | 'wrap'> & {
  readonly nowS: number;
  readonly outcomes: readonly Outcome[];
};

/**
 * The times at which a piece may pass a target, from those of its members and from how far
 * earlier forecasts fell from what came: a conformal predictive distribution (Vovk 2017) on the
 * logarithm of the time left, weighted towards forecasts made at a like stage, with the
 * ensemble's own spread as one outcome or two more. Times and `nowS` in seconds since the piece
 * went in; infinity for never.
 */
export function calibrated(passagesS: readonly Weighted[], now: Now): Weighted[] {
  const { nowS, outcomes } = now;
  const share = OWN_WEIGHT / weightOf(passagesS);
  const raw = rawOf(passagesS);
  if (raw === undefined) {
    return passagesS.map(({ value, weight }) => ({ value, weight: weight * share }));
  }
  const middle = scaled(raw.p50S - nowS);
  const own = passagesS.map(({ value, weight }) => ({
    value: OWN_INFLATION * (scaled(value - nowS) - middle),
    weight: weight * share,
  }));
  const seen = witnessed(outcomes, { ...now, raw });
  return [...own, ...seen].map((miss) => ({
    value: nowS + unscaled(middle + miss.value),
    weight: miss.weight,
  }));
}

/**
 * By how much earlier forecasts missed, and what each of them counts for. Those of one cook count
 * together for as much as the likest of them: they missed by the same meat.
 */
function witnessed(outcomes: readonly Outcome[], now: Now & { raw: Raw }): Weighted[] {
  const alike = outcomes.map((outcome) => likeness(outcome, now));
  const ofCook = new Map<string, { sum: number; most: number }>();
  for (const [i, { cookId }] of outcomes.entries()) {
    const { sum, most } = ofCook.get(cookId) ?? { sum: 0, most: 0 };
    const weight = alike[i] ?? 0;
    ofCook.set(cookId, { sum: sum + weight, most: Math.max(most, weight) });
  }
  const weights = outcomes.map(({ cookId }, i) => {
    const { sum, most } = ofCook.get(cookId) ?? { sum: 0, most: 0 };
    return sum === 0 ? 0 : ((alike[i] ?? 0) * most) / sum;
  });
  const isOther = (i: number) => outcomes[i]?.wrap !== now.wrap;
  const others = weights.reduce((sum, weight, i) => sum + (isOther(i) ? weight : 0), 0);
  const kept = Math.min(1, OTHER_WRAPS_AT_MOST / others);
  return outcomes.map((outcome, i) => ({
    value: missOf(outcome),
    weight: (weights[i] ?? 0) * (isOther(i) ? kept : 1),
  }));
}

function missOf({ madeAtS, raw, passedS }: Outcome): number {
  if (passedS === undefined) return Number.POSITIVE_INFINITY;
  return scaled(passedS - madeAtS) - scaled(raw.p50S - madeAtS);
}

function likeness(outcome: Outcome, { nowS, target, wrap, raw }: Now & { raw: Raw }): number {
  if (outcome.target.way !== target.way) return 0;
  const shareOf = (atS: number, { p50S }: Raw) => atS / Math.max(p50S, 1);
  const off = [
    (shareOf(outcome.madeAtS, outcome.raw) - shareOf(nowS, raw)) / NEAR_SHARE,
    (outcome.raw.never - raw.never) / NEAR_NEVER,
    (outcome.target.tempC - target.tempC) / NEAR_K,
  ];
  const distance = off.reduce((sum, value) => sum + value * value, 0);
  return Math.exp(-distance / 2) * (outcome.wrap === wrap ? 1 : OTHER_WRAP);
}
