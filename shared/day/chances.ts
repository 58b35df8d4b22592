import { scoreOf } from '../cook/index.ts';
import { must, pickBelow, seeded } from '../kernel/index.ts';

/** Something that goes quicker or slower than usual, in part because of the smoker it is in. */
export type Chance = {
  readonly name: string;
  readonly smoker: string | null;
  /** How much of its doubt it has in common with what else is in that smoker, 0–1. */
  readonly ofSmoker: number;
};

/**
 * How a few things may go together, in so many cases: for each the normal scores of the cases,
 * every score once, so that in one of ten it is below its P10 however few cases there are. What is
 * in one smoker leans one way, by what it has in common with it (a normal copula of one factor; Li
 * 2000, from memory). One name has the same chances whatever else is asked about.
 */
export function chancesOf(
  things: readonly Chance[],
  cases: number,
): ReadonlyMap<string, readonly number[]> {
  const scores = Array.from({ length: cases }, (_, i) => scoreOf((i + 0.5) / cases));
  return new Map(
    things.map(({ name, smoker, ofSmoker }) => {
      const own = shuffled(scores, `piece ${name}`);
      const common = smoker === null ? own : shuffled(scores, `smoker ${smoker}`);
      const lean = own.map((score, i) => {
        const shared = smoker === null ? 0 : ofSmoker;
        return Math.sqrt(shared) * must(common[i], 'a score') + Math.sqrt(1 - shared) * score;
      });
      const order = [...lean.keys()].sort((a, b) => (lean[a] ?? 0) - (lean[b] ?? 0));
      const ranked = new Array<number>(cases).fill(0);
      order.forEach((of, rank) => {
        ranked[of] = must(scores[rank], 'a score');
      });
      return [name, ranked] as const;
    }),
  );
}

/** A mixing of its own for each name, the same all day: ranges must not flicker. */
function shuffled(scores: readonly number[], name: string): number[] {
  const seed = [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) | 0, 11);
  const random = seeded(seed);
  const mixed = [...scores];
  for (let i = mixed.length - 1; i > 0; i--) {
    const other = pickBelow(random, i + 1);
    [mixed[i], mixed[other]] = [must(mixed[other], 'a score'), must(mixed[i], 'a score')];
  }
  return mixed;
}

/** The share of all that is above P90, as a normal score. */
const FAR = scoreOf(0.9);

/** What is known of a value: P10, P50, P90, and the chance that it never comes. */
export type Doubt = {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly never: number;
};

/** The value at a normal score: straight through P10, P50 and P90; infinite for never. */
export function valueAt({ low, middle, high, never }: Doubt, score: number): number {
  if (never > 0 && score > scoreOf(1 - Math.min(never, 1 - 1e-9))) return Number.POSITIVE_INFINITY;
  const slope = score < 0 ? middle - low : high - middle;
  return middle + (score / FAR) * slope;
}
