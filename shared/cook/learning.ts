import { type Belief, heeding, type Message, unlearned } from './belief.ts';
import { apply, identity, inverse, type Matrix, plus, tabulate } from './matrix.ts';
import { HOME_UNKNOWNS } from './scene.ts';

/**
 * Of the spread of the priors one half is how kitchens differ, the other how the pieces of one kitchen do
 * (judged). The second is held as if seen on so many pieces before the kitchen's own count.
 */
const WITHIN = 0.5;
const HELD_AS_PIECES = 12;
const ROUNDS = 12;

/**
 * What a kitchen may believe of its next piece of a cut in a smoker, from what the finished ones said: each was
 * drawn about the kitchen's own mean with the kitchen's own spread, both found by expectation and
 * maximisation (Dempster, Laird and Rubin 1977). With none it is the priors.
 */
export function learn(finished: readonly Message[]): Belief {
  const size = HOME_UNKNOWNS;
  const count = finished.length;
  let mean = unlearned(size).mean;
  let within: Matrix = scaled(identity(size), WITHIN);
  let doubt: Matrix = scaled(identity(size), 1 - WITHIN);
  for (let round = 0; round < (count > 0 ? ROUNDS : 0); round++) {
    const centre: Belief = { mean, covariance: within };
    const pieces = finished.map((message) => heeding(centre, [message]));
    const precision = inverse(within);
    doubt = inverse(
      tabulate(size, size, (i, j) => {
        return count * (precision[i]?.[j] ?? 0) + (i === j ? 1 / (1 - WITHIN) : 0);
      }),
    );
    const sum = identity(size).map((_, i) =>
      pieces.reduce((total, piece) => total + (piece.mean[i] ?? 0), 0),
    );
    const next = apply(doubt, apply(precision, sum));
    within = tabulate(size, size, (i, j) => {
      const held = i === j ? HELD_AS_PIECES * WITHIN : 0;
      const seen = pieces.reduce((total, piece) => {
        const [a, b] = [
          (piece.mean[i] ?? 0) - (next[i] ?? 0),
          (piece.mean[j] ?? 0) - (next[j] ?? 0),
        ];
        return total + (piece.covariance[i]?.[j] ?? 0) + a * b;
      }, held);
      return seen / (HELD_AS_PIECES + count);
    });
    mean = next;
  }
  return { mean, covariance: plus(within, doubt) };
}

const scaled = (matrix: Matrix, by: number): number[][] =>
  matrix.map((row) => row.map((value) => value * by));
