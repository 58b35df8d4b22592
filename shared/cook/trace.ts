import type { CookRun } from './cook-run.ts';

/**
 * Values that a run kept at the end of its steps, read straight between them; after its end, as
 * there.
 */
export function readAt(run: CookRun, values: Float64Array, timesS: readonly number[]): number[] {
  let step = 0;
  return timesS.map((timeS) => {
    while (step < run.length - 2 && (run.timesS[step + 1] ?? 0) < timeS) step++;
    const [fromS = 0, toS = 0] = [run.timesS[step], run.timesS[step + 1]];
    const [from = 0, to = 0] = [values[step], values[step + 1]];
    if (run.length < 2) return from;
    return from + (to - from) * Math.max(0, Math.min((timeS - fromS) / (toS - fromS), 1));
  });
}
