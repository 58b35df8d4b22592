import type { Placed } from './chain-placed.ts';
import type { Closure } from './closure.ts';

/** Units with whoever must be gone before they can be used again; nobody, if nobody used them. */
type Tail = { readonly users: readonly Placed[]; amount: number };

/** How well a tail suits the next user; less is better. */
const ORDERED_ANYWAY = 0;
const UNUSED = 1;
const FREE = 2;
const BUSY = 3;

/** The units of one resource, each with its last user so far. */
export class Tails {
  readonly #closure: Closure;
  #tails: Tail[];

  constructor(capacity: number, closure: Closure) {
    this.#closure = closure;
    this.#tails = [{ users: [], amount: capacity }];
  }

  /** Passes so many units on to a user; answers with those whom it must therefore wait for. */
  pass(user: Placed, amount: number): Placed[] {
    const from = new Set<Placed>();
    let missing = amount;
    while (missing > 0) {
      const tail = this.#best(user, missing);
      if (!tail) break;
      const taken = Math.min(tail.amount, missing);
      tail.amount -= taken;
      missing -= taken;
      for (const last of tail.users) from.add(last);
    }
    for (const last of from) this.#closure.link(last.number, user.number);
    // Where something began before it should have, who comes next waits for both.
    const still = [...from].filter(({ placement }) => placement.endS > user.placement.startS);
    this.#tails = this.#tails.filter((tail) => tail.amount > 0);
    this.#tails.push({ users: [user, ...still], amount: amount - missing });
    return [...from];
  }

  #best(user: Placed, missing: number): Tail | undefined {
    let best: Tail | undefined;
    for (const tail of this.#tails) {
      if (tail.amount === 0) continue;
      if (!best || this.#compare(tail, best, user, missing) < 0) best = tail;
    }
    return best;
  }

  /** Kind first; then whether one link is enough; then who has been free longest, for more float. */
  #compare(a: Tail, b: Tail, user: Placed, missing: number): number {
    const [kindA, kindB] = [this.#kind(a, user), this.#kind(b, user)];
    if (kindA !== kindB) return kindA - kindB;
    const [covered, coveredB] = [Math.min(a.amount, missing), Math.min(b.amount, missing)];
    if (kindA !== BUSY && covered !== coveredB) return coveredB - covered;
    return (a.users[0]?.placement.endS ?? 0) - (b.users[0]?.placement.endS ?? 0);
  }

  #kind({ users }: Tail, user: Placed): number {
    const last = users[0];
    if (!last) return UNUSED;
    if (this.#closure.precedes(last.number, user.number)) return ORDERED_ANYWAY;
    const { startS } = user.placement;
    const over = last.placement.endS <= startS;
    const inOrder = last.placement.startS < startS || last.rank < user.rank;
    return over && inOrder ? FREE : BUSY;
  }
}
