import { at } from '../network.ts';
import type { Units } from './crews.ts';

/** Can begin from then on, with so much work for one unit, and is so long at the most. */
export type Job = { readonly releaseS: number; readonly workS: number; readonly lengthS: number };

/**
 * What jobs must wait for one another, in sum, at the least: let all units work on one job after
 * the other, the one with the least left to do first, dropping it when one with less comes (L.
 * Schrage, Operations Research 16, 1968; for one machine as fast as all together, whose completion
 * times no schedule beats). Jobs are taken in stretches of their releases that add up to most.
 *
 * All times are in the mirror; the units' spans are not.
 */
export function leastWaitingS(jobs: readonly Job[], units: readonly Units[]): number {
  const inOrder = jobs.toSorted((a, b) => a.releaseS - b.releaseS);
  const speeds = speedsOf(units);
  // best[i]: the most that the first i jobs, cut into stretches, must wait.
  const best = [0];
  for (let end = 1; end <= inOrder.length; end++) {
    let most = best[end - 1] ?? 0;
    for (const length of STRETCHES) {
      const begin = Math.max(0, end - length);
      most = Math.max(most, (best[begin] ?? 0) + waitingS(inOrder.slice(begin, end), speeds));
      if (begin === 0) break;
    }
    best.push(most);
  }
  return best[inOrder.length] ?? 0;
}

const STRETCHES = [2, 3, 5, 8, 12, 20, 32, 64, 128];

/** How many units there are from a moment on, in the mirror and in order. */
type Speed = { readonly fromS: number; readonly units: number };

function speedsOf(units: readonly Units[]): Speed[] {
  const changes = units.flatMap(({ capacity, spans }) => {
    if (!spans) return [{ atS: Number.NEGATIVE_INFINITY, by: capacity }];
    return Array.from({ length: spans.length / 2 }, (_, i) => [
      { atS: -at(spans, 2 * i + 1), by: capacity },
      { atS: -at(spans, 2 * i), by: -capacity },
    ]).flat();
  });
  let there = 0;
  return changes
    .sort((a, b) => a.atS - b.atS)
    .map(({ atS, by }) => {
      there += by;
      return { fromS: atS, units: there };
    });
}

/** The least sum of waiting of these jobs, given in the order of their releases. */
function waitingS(jobs: readonly Job[], speeds: readonly Speed[]): number {
  const left: number[] = [];
  let nowS = jobs[0]?.releaseS ?? 0;
  let speed = 0;
  let next = 0;
  let sumS = 0;
  while (next < jobs.length || left.length > 0) {
    for (; next < jobs.length && (jobs[next]?.releaseS ?? 0) <= nowS; next++) {
      const { releaseS = 0, workS = 0, lengthS = 0 } = jobs[next] ?? {};
      insert(left, workS);
      sumS -= releaseS + lengthS;
    }
    while ((speeds[speed + 1]?.fromS ?? Infinity) <= nowS) speed++;
    const { units, fromS } = speeds[speed] ?? { units: 0, fromS: 0 };
    const rate = fromS <= nowS ? units : 0;
    const untilS = Math.min(
      jobs[next]?.releaseS ?? Infinity,
      fromS > nowS ? fromS : (speeds[speed + 1]?.fromS ?? Infinity),
    );
    const workS = left.at(-1);
    if (workS === undefined) {
      nowS = jobs[next]?.releaseS ?? nowS;
    } else if (rate > 0 && nowS + workS / rate <= untilS) {
      left.pop();
      nowS += workS / rate;
      sumS += nowS;
    } else {
      // Nobody will ever be there again: what is left is told elsewhere to have no room.
      if (untilS === Infinity) return Math.max(0, sumS);
      if (rate > 0) left[left.length - 1] = workS - rate * (untilS - nowS);
      nowS = untilS;
    }
  }
  return Math.max(0, sumS);
}

/** Into a list from the most to the least. */
function insert(list: number[], value: number): void {
  let place = list.length;
  while (place > 0 && (list[place - 1] ?? 0) < value) place--;
  list.splice(place, 0, value);
}
