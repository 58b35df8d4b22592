import type { Index } from './index-of.ts';
import type { Lag, Length, Pin, Problem } from './model.ts';
import type { Arc } from './network.ts';
import { endOf, startOf } from './network.ts';

/** An arc that remembers the lag it came from, by its place in the problem. */
export type LagArc = Arc & { readonly lag: number };

/** The arcs that lags make: one forward for a minimum, one back for a maximum. */
export function lagArcs(problem: Problem, index: Index): LagArc[] {
  return problem.lags.flatMap((lag, number) => {
    const from = nodeOf(lag.from, index);
    const to = nodeOf(lag.to, index);
    const arcs: LagArc[] = [];
    if (lag.minS !== undefined) {
      arcs.push({ from, to, weightS: lag.minS, back: false, lag: number });
    }
    if (lag.maxS !== undefined) {
      arcs.push({ from: to, to: from, weightS: -lag.maxS, back: true, lag: number });
    }
    return arcs;
  });
}

/** The node an end of an activity is. */
export function nodeOf(end: Lag['from'], index: Index): number {
  const activity = index.activity(end.activity);
  return end.end === 'start' ? startOf(activity) : endOf(activity);
}

/** The arcs that keep an activity between its shortest and longest. */
export function lengthArcs(activity: number, minS: number, maxS: number): Arc[] {
  const [start, end] = [startOf(activity), endOf(activity)];
  return [
    { from: start, to: end, weightS: minS, back: false },
    { from: end, to: start, weightS: -maxS, back: true },
  ];
}

export type LengthBounds = { readonly minS: number; readonly maxS: number };

/** How short and how long a plan may make it; a wait gets the part `aim` of its margin, 0 to 1. */
export function lengthBounds(length: Length, aim: number): LengthBounds {
  if (length.kind === 'work') return { minS: length.typicalS, maxS: length.typicalS };
  const { minS, maxS, aimS } = length;
  const marginS = Math.max(0, (aimS ?? minS) - minS);
  return { minS: minS + Math.round(aim * marginS), maxS };
}

/** A start and an end that are both pinned are the length. */
export function pinnedLength(pin: Pin | undefined, bounds: LengthBounds): LengthBounds {
  if (pin?.startS === undefined || pin.endS === undefined) return bounds;
  const lengthS = pin.endS - pin.startS;
  return { minS: lengthS, maxS: lengthS };
}
