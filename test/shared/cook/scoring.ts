/** A forecast as equally likely times, in rising order; infinity for never. */
export type Likely = readonly number[];

/** What never comes is scored as coming so late. */
const NEVER_S = 60 * 3600;

/**
 * The continuous ranked probability score of equally likely values, mean|x - y| - mean|x - x'|/2
 * (Gneiting and Raftery 2007, "Strictly proper scoring rules, prediction, and estimation"), in
 * the unit of the values.
 */
export function crps(likely: Likely, came: number): number {
  const sorted = likely.map((value) => Math.min(value, NEVER_S)).sort((a, b) => a - b);
  const count = sorted.length;
  const missed = sorted.reduce((sum, value) => sum + Math.abs(value - came), 0) / count;
  const apart = sorted.reduce((sum, value, i) => sum + value * (2 * i - count + 1), 0);
  return missed - apart / (count * count);
}

/** So many equally likely values for a sample of any size: each the middle of its share. */
export function likelyOf(sample: readonly number[], count = 20): Likely {
  const sorted = [...sample].sort((a, b) => a - b);
  return Array.from({ length: count }, (_, k) => {
    const place = Math.max(0, ((k + 0.5) / count) * sorted.length - 0.5);
    const index = Math.min(Math.floor(place), sorted.length - 1);
    const from = sorted[index] ?? Number.NaN;
    const to = sorted[index + 1] ?? from;
    return to === from ? from : from + (place - index) * (to - from);
  });
}
