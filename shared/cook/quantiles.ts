/** A value and how much it counts for. */
export type Weighted = { readonly value: number; readonly weight: number };

/** What values count for together. */
export const weightOf = (values: readonly Weighted[]): number =>
  values.reduce((sum, { weight }) => sum + weight, 0);

/**
 * The values below which such shares of the weight lie, for shares in rising order: each value
 * stands for the middle of its weight, straight between them; infinite where a share falls among
 * infinite ones.
 * @example quantilesOf([{ value: 1, weight: 1 }, { value: 3, weight: 1 }], [0.5]) //=> [2]
 */
export function quantilesOf(values: readonly Weighted[], shares: readonly number[]): number[] {
  const sorted = values.filter(({ weight }) => weight > 0).sort((a, b) => a.value - b.value);
  const whole = sorted.reduce((sum, { weight }) => sum + weight, 0);
  let index = 0;
  let below = 0;
  let before: { value: number; at: number } | undefined;
  return shares.map((share) => {
    for (let entry = sorted[index]; entry !== undefined; entry = sorted[index]) {
      const at = (below + entry.weight / 2) / whole;
      if (at >= share)
        return before === undefined ? entry.value : between(before, entry, at, share);
      before = { value: entry.value, at };
      below += entry.weight;
      index++;
    }
    return before?.value ?? Number.NaN;
  });
}

function between(
  before: { readonly value: number; readonly at: number },
  after: Weighted,
  afterAt: number,
  share: number,
): number {
  if (after.value === Number.POSITIVE_INFINITY) return after.value;
  return (
    before.value + ((after.value - before.value) * (share - before.at)) / (afterAt - before.at)
  );
}

/** The same of values that all count alike. @example quantiles([1, 3], [0.5]) //=> [2] */
export function quantiles(values: readonly number[], shares: readonly number[]): number[] {
  return quantilesOf(
    values.map((value) => ({ value, weight: 1 })),
    shares,
  );
}
