/** What a piece was taken apart into, in any one unit of weight and of money. */
export type ButchersTest = {
  readonly purchased: { readonly weight: number; readonly pricePerWeight: number };
  /** Trim with what it is worth elsewhere; waste is worth nothing. */
  readonly trim: readonly { readonly weight: number; readonly pricePerWeight: number }[];
};

/**
 * What the usable part weighs and costs, once the trim has been credited at its own worth.
 * @example butchersTest({ purchased: { weight: 10, pricePerWeight: 2 }, trim: [] }).pricePerWeight
 * //=> 2
 */
export function butchersTest({ purchased, trim }: ButchersTest) {
  const weight = purchased.weight - sum(trim.map((part) => part.weight));
  const worth = (part: ButchersTest['purchased']) => part.weight * part.pricePerWeight;
  const cost = worth(purchased) - sum(trim.map(worth));
  return { weight, cost, pricePerWeight: cost / weight };
}

/**
 * The part of the whole that each part is, and what went missing between scale and scale.
 * @example cutTest(10, { lean: 7, bone: 2 }) //=> { shares: { lean: 0.7, bone: 0.2 }, missing: 0.1
 * }
 */
export function cutTest<Part extends string>(whole: number, parts: Readonly<Record<Part, number>>) {
  const weights = Object.entries<number>(parts);
  const shares = Object.fromEntries(weights.map(([name, weight]) => [name, weight / whole]));
  const missing = 1 - sum(weights.map(([, weight]) => weight / whole));
  return { shares: shares as Record<Part, number>, missing };
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
