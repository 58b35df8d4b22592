import type { Turn } from './turn.ts';

/** Units with whoever must be gone before they can be used again; nobody, if nobody used them. */
type Tail = { readonly users: readonly number[]; amount: number };

/** Whether one activity is over before another in any case, whatever else is decided. */
export type Precedes = (first: number, second: number) => boolean;

/** How well a tail suits the next user; less is better. */
const ORDERED_ANYWAY = 0;
const UNUSED = 1;
const FREE = 2;
const BUSY = 3;

/** The units of one resource, each with its last user so far. */
export class Tails {
  readonly #turn: Turn;
  readonly #precedes: Precedes;
  #tails: Tail[];

  constructor(capacity: number, turn: Turn, precedes: Precedes) {
    this.#turn = turn;
    this.#precedes = precedes;
    this.#tails = [{ users: [], amount: capacity }];
  }

  /** Passes so many units on to a user; answers with those whom it must therefore wait for. */
  pass(user: number, amount: number): number[] {
    const from = new Set<number>();
    let missing = amount;
    while (missing > 0) {
      const tail = this.#best(user, missing);
      if (!tail) break;
      const taken = Math.min(tail.amount, missing);
      tail.amount -= taken;
      missing -= taken;
      for (const last of tail.users) from.add(last);
    }
    // Where something began before it should have, who comes next waits for both.
    const still = [...from].filter((last) => this.#endS(last) > this.#startS(user));
    this.#tails = this.#tails.filter((tail) => tail.amount > 0);
    this.#tails.push({ users: [user, ...still], amount: amount - missing });
    return [...from];
  }

  #best(user: number, missing: number): Tail | undefined {
    let best: Tail | undefined;
    for (const tail of this.#tails) {
      if (tail.amount === 0) continue;
      if (!best || this.#compare(tail, best, user, missing) < 0) best = tail;
    }
    return best;
  }

  /**
   * Kind first; then whether one link is enough; then who has been free longest, for more float.
   */
  #compare(a: Tail, b: Tail, user: number, missing: number): number {
    const [kindA, kindB] = [this.#kind(a, user), this.#kind(b, user)];
    if (kindA !== kindB) return kindA - kindB;
    const [coveredA, coveredB] = [Math.min(a.amount, missing), Math.min(b.amount, missing)];
    if (kindA !== BUSY && coveredA !== coveredB) return coveredB - coveredA;
    return this.#endS(a.users[0]) - this.#endS(b.users[0]);
  }

  #kind({ users }: Tail, user: number): number {
    const last = users[0];
    if (last === undefined) return UNUSED;
    if (this.#precedes(last, user)) return ORDERED_ANYWAY;
    const { rank } = this.#turn;
    const isOver = this.#endS(last) <= this.#startS(user);
    const isBefore =
      this.#startS(last) < this.#startS(user) || (rank[last] ?? 0) < (rank[user] ?? 0);
    return isOver && isBefore ? FREE : BUSY;
  }

  #startS(user: number | undefined): number {
    return user === undefined ? 0 : (this.#turn.startS[user] ?? 0);
  }

  #endS(user: number | undefined): number {
    return user === undefined ? 0 : (this.#turn.endS[user] ?? 0);
  }
}
