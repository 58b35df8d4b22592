import type { Instant } from '../../shared/kernel/index.ts';
import { seconds } from '../../shared/kernel/index.ts';
import type { LoadDrawing } from '../../shared/view/index.ts';
import {
  durationWords,
  fireWords,
  HALF_DAY_MS,
  nearClock,
  nearRange,
  pitWords,
  type Say,
  temperature,
  textIn,
} from '../../shared/words/index.ts';

/** What lies in a rack and is wanted at one time. */
export type RackKind = {
  /** Of the loads that are said together the one that is least done. */
  readonly load: LoadDrawing;
  readonly pieces: number;
  readonly core: string;
  readonly what: string;
  readonly when: string;
  /** So far off that which half of the day is meant has to be said. */
  readonly isFar: boolean;
};

/** What its pieces are called, without how many. */
export const nameOf = ({ pieces, piece }: Pick<LoadDrawing, 'pieces' | 'piece'>, say: Say) =>
  textIn(pieces === 1 ? piece.one : piece.many, say);

/** What is next done to a load. */
export const nextOf = ({ next }: LoadDrawing, say: Say): string =>
  next ? textIn(next.title, say) : pitWords[say.language].off;

/**
 * What lies in a rack, a line for each: loads of one name that are wanted for the same at the same
 * time are one, so that no figure stands without what it counts and when.
 */
export function kindsOf(loads: readonly LoadDrawing[], now: Instant, say: Say): RackKind[] {
  const kinds = new Map<string, LoadDrawing[]>();
  for (const load of loads) {
    if (!load.here) continue;
    const key = [textIn(load.piece.many, say), nextOf(load, say), whenOf(load, now, say)].join('|');
    kinds.set(key, [...(kinds.get(key) ?? []), load]);
  }
  return [...kinds.values()].map((same) => {
    const load = same.reduce((a, b) => (coreOf(b) < coreOf(a) ? b : a));
    const pieces = same.reduce((sum, each) => sum + each.pieces, 0);
    const core = coreSaid(load, now, say);
    const isFar = (load.next?.lowAt ?? load.outAt) - now >= HALF_DAY_MS;
    // Right before *now* its name alone would read as an order.
    const what = `${nextOf(load, say)}${mayBeNow(load, now) ? ':' : ''}`;
    return { load, pieces, core, what, when: whenOf(load, now, say), isFar };
  });
}

const coreOf = ({ lastCore }: LoadDrawing) => lastCore?.tempC ?? Number.POSITIVE_INFINITY;

const mayBeNow = ({ next }: LoadDrawing, now: Instant): boolean =>
  next !== null && next.lowAt <= now && next.highAt > now;

function whenOf(load: LoadDrawing, now: Instant, say: Say): string {
  const { next, outAt } = load;
  if (!next) return nearClock(outAt, now, say);
  // That it may be now is more than a time that goes on with the clock.
  if (!mayBeNow(load, now)) return nearRange([next.lowAt, next.highAt], now, say);
  return `${pitWords[say.language].already}–${nearClock(next.highAt, now, say)}`;
}

/** Of the coolest of them, and how old it is where it is old. */
function coreSaid({ lastCore }: LoadDrawing, now: Instant, say: Say): string {
  if (!lastCore) return '';
  const core = pitWords[say.language].core(temperature(lastCore.tempC, say));
  return [core, agoWhereOld(lastCore.at, now, say)].filter(Boolean).join(', ');
}

/** A reading this old says how old it is. */
const OLD_MS = 40 * 60_000;
const STEP_MS = 5 * 60_000;

/** How long ago something was read, where that is long; in steps, so that a wall stands still. */
export function agoWhereOld(at: Instant, now: Instant, { language }: Pick<Say, 'language'>) {
  const agoMs = now - at;
  if (agoMs <= OLD_MS) return '';
  return fireWords[language].ago(durationWords(seconds((agoMs - (agoMs % STEP_MS)) / 1000)));
}
