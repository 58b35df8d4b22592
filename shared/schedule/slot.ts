import type { Board } from './board.ts';
import type { NetMode, Slot, Window } from './net.ts';
import type { Places } from './places.ts';

/** A search steps from conflict to conflict; one that takes more steps than this is lost. */
const STEPS_MOST = 10_000;

/**
 * The earliest slot for an activity in one mode within a window, or undefined. Each round asks
 * every need for the earliest start it can have, and goes on from the latest of these.
 */
export function earliestSlot(
  activity: number,
  mode: NetMode,
  window: Window,
  board: Board,
  places: Places,
): Slot | undefined {
  let startS = Math.max(window.startLoS, mode.startLoS, window.endLoS - mode.maxS);
  for (let step = 0; step < STEPS_MOST; step++) {
    const endS = Math.max(startS + mode.minS, window.endLoS);
    if (startS > window.startHiS || endS > Math.min(window.endHiS, mode.endHiS)) return undefined;
    const possibleS = earliestRoom(activity, mode, startS, endS, board, places);
    if (possibleS > startS) {
      startS = possibleS;
      continue;
    }
    const uses = places.choose(activity, mode, startS, endS);
    if (uses) return { mode, startS, endS, uses };
    startS = board.nextChange(new Set(mode.needs.flatMap(({ resources }) => resources)), startS);
  }
  return undefined;
}

/** The earliest start that every need, taken by itself, and every state may allow. */
function earliestRoom(
  activity: number,
  mode: NetMode,
  startS: number,
  endS: number,
  board: Board,
  places: Places,
): number {
  let possibleS = startS;
  for (const { resource, state } of mode.states) {
    possibleS = Math.max(possibleS, board.inState(resource, state, startS, endS));
  }
  for (const { amount, resources } of mode.needs) {
    let best = Number.POSITIVE_INFINITY;
    for (const resource of resources) {
      const s = places.room(activity, mode, resource, amount, startS, endS);
      if (s < best) best = s;
      if (best <= startS) break;
    }
    possibleS = Math.max(possibleS, best);
  }
  return possibleS;
}
