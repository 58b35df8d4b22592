import {
  cutPriors,
  type Forecast,
  forecast,
  isKnown,
  type Outcome,
  type Piece,
  type Smoker,
  smokerPriors,
} from '../../../shared/cook/index.ts';
import { celsius, seconds, seeded } from '../../../shared/kernel/index.ts';
import { type BaselineName, baseline, baselineNames, type Seen } from './baselines.ts';
import { crps, type Likely } from './scoring.ts';
import { DONE_C, syntheticKitchen, type TrueCook } from './synthetic-kitchen.ts';

/** How one forecast of one cook came out. */
export type Scored = {
  readonly wrap: TrueCook['wrap'];
  readonly share: number;
  /** Whether the kitchen had finished cooks enough. */
  readonly isCalibrated: boolean;
  readonly isCovered: boolean;
  readonly crpsH: number;
  readonly missedH: number;
  readonly leftH: number;
  readonly baselinesH: Readonly<Partial<Record<BaselineName, number>>>;
};

/** Hours that a cut usually takes, before the kitchen knows better; of our invented kitchen. */
const USUAL_S = { shoulder: 11 * 3600, brisket: 12 * 3600 } as const;

/**
 * A kitchen's life from its first day: every cook is forecast at some shares of the hours that
 * its cut, so wrapped, usually takes there, with no more than was known at that time, and teaches
 * once it is done. The share is not that of the cook's own length: whoever knew that would know
 * the end.
 */
export function* kitchenLife(seed: number, cooks: number, shares: readonly number[]) {
  const kitchen = syntheticKitchen(seeded(seed));
  const finished: TrueCook[] = [];
  const looks: Seen[] = [];
  const outcomes: Outcome[] = [];
  for (let number = 0; number < cooks; number++) {
    const cook = kitchen.cook();
    const usualS = usualOf(cook, finished);
    const seen: Seen[] = [];
    const made: Outcome[] = [];
    for (const share of shares) {
      const atS = Math.round(share * usualS);
      if (atS >= cook.doneS) break;
      const found = forecastOf(cook, atS, { seed: seed + number, outcomes });
      const target = found.targets[0];
      if (target?.raw === undefined) continue;
      const now = { cook, share, atS };
      yield scoreOf(now, target, isKnown(outcomes), (name) => baseline(name, now, finished, looks));
      seen.push(now);
      made.push({
        cookId: String(number),
        target,
        wrap: cook.wrap,
        madeAtS: seconds(atS),
        raw: target.raw,
        passedS: seconds(cook.doneS),
      });
    }
    finished.push(cook);
    looks.push(...seen);
    outcomes.push(...made);
  }
}

function scoreOf(
  { cook, share, atS }: Seen,
  { p10S, p50S, p90S, equallyLikelyS }: Forecast['targets'][number],
  isCalibrated: boolean,
  of: (name: BaselineName) => Likely | undefined,
): Scored {
  const leftS = cook.doneS - atS;
  const scoreH = (likely: Likely) => crps(likely, leftS) / 3600;
  const baselines = baselineNames.flatMap((name) => {
    const likely = of(name);
    return likely === undefined ? [] : [[name, scoreH(likely)] as const];
  });
  const never = Number.POSITIVE_INFINITY;
  return {
    ...{ wrap: cook.wrap, share, isCalibrated },
    isCovered: (p10S ?? never) <= cook.doneS && cook.doneS <= (p90S ?? never),
    crpsH: scoreH(equallyLikelyS.map((time) => (time ?? never) - atS)),
    missedH: Math.abs((p50S ?? 60 * 3600) - cook.doneS) / 3600,
    leftH: leftS / 3600,
    baselinesH: Object.fromEntries(baselines),
  };
}

function usualOf({ cut, wrap }: TrueCook, finished: readonly TrueCook[]): number {
  const alike = finished
    .filter((cook) => cook.cut === cut && cook.wrap === wrap)
    .map(({ doneS }) => doneS)
    .sort((a, b) => a - b);
  return alike[Math.floor(alike.length / 2)] ?? USUAL_S[cut];
}

/** What the product says at a time of a cook, from what the kitchen has seen of it by then. */
function forecastOf(
  cook: TrueCook,
  atS: number,
  options: { readonly seed: number; readonly outcomes: readonly Outcome[] },
): Forecast {
  const { cut, wrap, wrappedS, wrapAtC, sides, startC, setC } = cook;
  const wrapping =
    wrappedS !== undefined && wrappedS <= atS
      ? { by: 'time' as const, atS: seconds(wrappedS) }
      : { by: 'core' as const, tempC: celsius(wrapAtC) };
  const home = { kind: 'home' } as const;
  const bare = { from: { by: 'time', atS: seconds(0) }, place: home, wrap: 'none' } as const;
  const piece: Piece = {
    ...{ cut: cutPriors[cut], sides, startC: celsius(startC) },
    stays: wrap === 'none' ? [bare] : [bare, { from: wrapping, place: home, wrap }],
    targets: [{ id: 'done', tempC: celsius(DONE_C), way: 'rising' }],
  };
  const smoker: Smoker = {
    ...{ id: 'smoker', prior: smokerPriors.draught, setC: celsius(setC), doors: [] },
    log: cook.log.filter((entry) => entry.atS <= atS),
  };
  const readings = cook.readings.filter((reading) => reading.atS <= atS);
  const found = forecast(piece, smoker, readings, { ...options, nowS: seconds(atS) });
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.forecast;
}
