import { apply, identity, inverse, type Matrix, plus, withoutNegative } from './matrix.ts';

/** What is believed of some unknowns: a normal distribution of their z. */
export type Belief = { readonly mean: readonly number[]; readonly covariance: Matrix };

/**
 * What readings said of some unknowns, without what was believed before: the likelihood as a
 * normal one, by its precision and the pull it exerts. What two say of one thing adds up.
 */
export type Message = { readonly precision: Matrix; readonly pull: readonly number[] };

/** Nothing known but the priors. @example unlearned(1) //=> { mean: [0], covariance: [[1]] } */
export function unlearned(size: number): Belief {
  return { mean: new Array<number>(size).fill(0), covariance: identity(size) };
}

/**
 * What turned one belief into the other, where the other was seen through so many members of an
 * ensemble: its precision is cut back by what so few overstate it (Hartlap 2007), and never
 * teaches less than nothing.
 */
export function messageBetween(before: Belief, after: Belief, members: number): Message {
  const held = inverse(before.covariance);
  const overstated = (members - after.mean.length - 2) / (members - 1);
  const gained = inverse(after.covariance).map((row) => row.map((value) => value * overstated));
  const precision = withoutNegative(plus(gained, held, -1));
  // The pull that, with this precision, leads from the one mean to the other.
  const whole = apply(plus(held, precision), after.mean);
  const ofBefore = apply(held, before.mean);
  return { precision, pull: whole.map((value, i) => value - (ofBefore[i] ?? 0)) };
}

/** A belief after messages that are independent of each other. */
export function heeding(belief: Belief, messages: readonly Message[]): Belief {
  if (messages.length === 0) return belief;
  const held = inverse(belief.covariance);
  const precision = messages.reduce<Matrix>((sum, message) => plus(sum, message.precision), held);
  const pulls = messages.reduce<readonly number[]>(
    (sum, { pull }) => sum.map((value, i) => value + (pull[i] ?? 0)),
    apply(held, belief.mean),
  );
  const covariance = inverse(precision);
  return { mean: apply(covariance, pulls), covariance };
}

/** A message about some unknowns as one about more of them, of which it says nothing. */
export function placed(message: Message, from: number, size: number): Message {
  const of = (i: number, j: number) => message.precision[i - from]?.[j - from] ?? 0;
  return {
    precision: identity(size).map((row, i) => row.map((_, j) => of(i, j))),
    pull: identity(size).map((_, i) => message.pull[i - from] ?? 0),
  };
}

/** What a belief says of the unknowns from one place up to another. */
export function partOf(belief: Belief, from: number, to: number): Belief {
  const covariance = belief.covariance.slice(from, to).map((row) => row.slice(from, to));
  return { mean: belief.mean.slice(from, to), covariance };
}
