import type { Instant } from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import type { PassDish, PassPan, PassService } from './pass-dish.ts';

/** When nothing is left while more is asked for, and how many are missing till the close. */
export type RunsOut = { readonly at: Instant; readonly missing: number };

type Stock = {
  readonly dish: Pick<PassDish, 'perQuarter' | 'sold'>;
  readonly pans: readonly { readonly pan: PassPan; readonly left: number }[];
  readonly coming: readonly PassPan[];
};

const MINUTE_MS = 60_000;
const QUARTER_MS = 15 * MINUTE_MS;
/** Less than this missing is the roundness of the curve. */
const MISSED_FROM = 0.5;

/**
 * Sells the rest of the service minute by minute as the curve asks, at the pace that has been seen,
 * from what is left and what still lands; what may no longer be held is sold no more. Null where it
 * lasts to the close.
 */
export function runsOut(stock: Stock, service: PassService, now: Instant): RunsOut | null {
  const { perQuarter } = stock.dish;
  const pace = paceOf(stock.dish, service, now);
  const lots = lotsOf(stock);
  let missing = 0;
  let at: Instant | null = null;
  for (let t = Math.max(now, service.opensAt); t < service.closesAt; t += MINUTE_MS) {
    const quarter = Math.floor((t - service.opensAt) / QUARTER_MS);
    const asked = ((perQuarter[quarter] ?? 0) * pace * MINUTE_MS) / QUARTER_MS;
    missing += asked - sell(lots, t, asked);
    if (at === null && missing > MISSED_FROM) at = instant(t);
  }
  return at === null ? null : { at, missing: Math.round(missing) };
}

type Lot = { left: number; readonly from: number; readonly till: number };

function lotsOf({ pans, coming }: Stock): Lot[] {
  const till = ({ heldUntil }: PassPan) => heldUntil ?? Number.POSITIVE_INFINITY;
  return [
    // What is held whole can be cut as it is asked for.
    ...pans.map(({ pan, left }): Lot => ({ left, from: 0, till: till(pan) })),
    ...coming.map((pan): Lot => ({ left: pan.portions, from: pan.readyAt, till: till(pan) })),
  ].sort((a, b) => a.till - b.till || a.from - b.from);
}

/** Takes so many from what is there; how many there were. */
function sell(lots: readonly Lot[], t: number, asked: number): number {
  let sold = 0;
  for (const lot of lots) {
    if (lot.from > t || lot.till <= t) continue;
    const taken = Math.min(lot.left, asked - sold);
    lot.left -= taken;
    sold += taken;
  }
  return sold;
}

/**
 * How many times faster than the curve it sells. Trusted as far as it has been seen: with a quarter
 * of the curve behind, a quarter of what was counted and three quarters plan.
 */
function paceOf({ perQuarter, sold }: Stock['dish'], service: PassService, now: Instant): number {
  const total = perQuarter.reduce((sum, portions) => sum + portions, 0);
  const quarters = Math.max(0, (now - service.opensAt) / QUARTER_MS);
  const expected = perQuarter.reduce(
    (sum, portions, i) => sum + portions * Math.min(1, Math.max(0, quarters - i)),
    0,
  );
  // Nobody counts here, or nothing has been asked for yet.
  if (sold === 0 || expected < 1) return 1;
  const seen = Math.min(1, expected / total);
  return 1 + seen * (sold / expected - 1);
}
