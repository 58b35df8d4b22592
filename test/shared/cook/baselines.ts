import { type Likely, likelyOf } from './scoring.ts';
import { DONE_C, type TrueCook } from './synthetic-kitchen.ts';

/** What a kitchen could do without a model, each with the spread that its own past shows. */
export const baselineNames = [
  'hours of the cut',
  'hours by thickness',
  'straight line',
  'exponential',
] as const;
export type BaselineName = (typeof baselineNames)[number];

/** A cook at a moment of it. */
export type Seen = { readonly cook: TrueCook; readonly share: number; readonly atS: number };

/** With fewer than this of its own kind a baseline has nothing to say. */
const FEWEST = 4;

/** Errors of the two extrapolations are told in the logarithm of the time left and this. */
const SHIFT_S = 1200;

/** The times left that a baseline gives, from finished cooks and from when each was looked at. */
export function baseline(
  name: BaselineName,
  now: Seen,
  finished: readonly TrueCook[],
  looks: readonly Seen[],
): Likely | undefined {
  switch (name) {
    case 'hours of the cut':
      return leftOf(alike(now, finished).map(({ doneS }) => doneS - now.atS));
    case 'hours by thickness': {
      const thick = now.cook.sides.thicknessM;
      const hours = alike(now, finished).map(
        ({ doneS, sides }) => (doneS * thick) / sides.thicknessM,
      );
      return leftOf(hours.map((doneS) => doneS - now.atS));
    }
    case 'straight line':
      return extrapolated(now, looks, ({ nowC, risingKPerS }) => (DONE_C - nowC) / risingKPerS);
    case 'exponential':
      return extrapolated(now, looks, ({ nowC, risingKPerS }, { setC }) =>
        setC > DONE_C && setC > nowC
          ? (Math.log((setC - nowC) / (setC - DONE_C)) * (setC - nowC)) / risingKPerS
          : undefined,
      );
  }
}

const alike = ({ cook }: Seen, finished: readonly TrueCook[]) =>
  finished.filter(({ cut, wrap }) => cut === cook.cut && wrap === cook.wrap);

/** Only those that took longer than has gone by can still be it. */
function leftOf(leftsS: readonly number[]): Likely | undefined {
  const open = leftsS.filter((leftS) => leftS > 0);
  if (leftsS.length < FEWEST) return undefined;
  return open.length >= FEWEST ? likelyOf(open) : likelyOf(leftsS.map((s) => Math.max(s, 600)));
}

type Trend = { readonly nowC: number; readonly risingKPerS: number };
type Extrapolation = (trend: Trend, cook: TrueCook) => number | undefined;

function extrapolated(now: Seen, looks: readonly Seen[], by: Extrapolation): Likely | undefined {
  const leftOfSeen = ({ cook, atS }: Seen) => {
    const trend = trendOf(cook, atS);
    const leftS = trend && by(trend, cook);
    return leftS === undefined ? undefined : Math.log(Math.max(leftS, 0) + SHIFT_S);
  };
  const left = leftOfSeen(now);
  const alike = looks.filter(
    ({ cook, share }) => cook.wrap === now.cook.wrap && share === now.share,
  );
  const missed = alike.flatMap((look) => {
    const foreseen = leftOfSeen(look);
    if (foreseen === undefined) return [];
    return [Math.log(look.cook.doneS - look.atS + SHIFT_S) - foreseen];
  });
  if (left === undefined || missed.length < FEWEST) return undefined;
  return likelyOf(missed.map((miss) => Math.max(60, Math.exp(left + miss) - SHIFT_S)));
}

/** The straight line through the last five readings, which must rise at all. */
function trendOf({ readings }: TrueCook, atS: number): Trend | undefined {
  const last = readings.filter((reading) => reading.atS <= atS).slice(-5);
  if (last.length < 3) return undefined;
  const mean = (of: (reading: (typeof last)[number]) => number) =>
    last.reduce((sum, reading) => sum + of(reading), 0) / last.length;
  const [meanS, meanC] = [mean((reading) => reading.atS), mean((reading) => reading.tempC)];
  const slope =
    mean((reading) => (reading.atS - meanS) * (reading.tempC - meanC)) /
    mean((reading) => (reading.atS - meanS) ** 2);
  const risingKPerS = Math.max(slope, 0.5 / 3600);
  return { nowC: meanC + risingKPerS * (atS - meanS), risingKPerS };
}
