import { cell } from './cell.ts';
import type { Project } from './project.ts';

/** No lag at all, still far from where sums of whole numbers overflow. */
export const NO_LAG = -(1 << 28);

/** The longest path of lags from each activity to each: `from * size + to`. */
export type LongestLags = { readonly size: number; readonly least: Int32Array };

/** All longest paths (R. W. Floyd 1962); undefined where a circle of lags is more than 0 long. */
export function longestLags({ durations, lags }: Project): LongestLags | undefined {
  const size = durations.length;
  const least = new Int32Array(size * size).fill(NO_LAG);
  for (let i = 0; i < size; i++) least[i * size + i] = 0;
  for (let lag = 0; lag < lags.from.length; lag++) {
    const place = cell(lags.from, lag) * size + cell(lags.to, lag);
    least[place] = Math.max(cell(least, place), cell(lags.least, lag));
  }
  for (let i = 0; i < size; i++) {
    const end = i * size + size - 1;
    least[i] = Math.max(cell(least, i), 0);
    least[end] = Math.max(cell(least, end), cell(durations, i));
  }
  for (let via = 0; via < size; via++) {
    for (let from = 0; from < size; from++) {
      relax(least, size, from, via);
      if (cell(least, from * size + from) > 0) return undefined;
    }
  }
  return { size, least };
}

function relax(least: Int32Array, size: number, from: number, via: number): void {
  const first = cell(least, from * size + via);
  if (first === NO_LAG) return;
  for (let to = 0; to < size; to++) {
    const second = cell(least, via * size + to);
    const sum = first + second;
    if (second !== NO_LAG && sum > cell(least, from * size + to)) least[from * size + to] = sum;
  }
}

/** Takes one more lag into the longest paths; false where it closes a circle of more than 0. */
export function addLag(longest: LongestLags, from: number, to: number, lag: number): boolean {
  const { size, least } = longest;
  if (lag + cell(least, to * size + from) > 0) return false;
  for (let first = 0; first < size; first++) {
    const reach = cell(least, first * size + from);
    if (reach === NO_LAG) continue;
    for (let last = 0; last < size; last++) {
      const rest = cell(least, to * size + last);
      const sum = reach + lag + rest;
      if (rest !== NO_LAG && sum > cell(least, first * size + last))
        least[first * size + last] = sum;
    }
  }
  return true;
}
