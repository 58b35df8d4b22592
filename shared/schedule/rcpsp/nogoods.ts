import { cell } from './cell.ts';
import { reasonOf, type Say } from './reason.ts';
import { opposite, type Trail } from './trail.ts';

/** A clause: bounds and values by turns, of which one statement at least must hold. */
type Clause = Int32Array;

const DROPPED: Clause = new Int32Array(0);

/**
 * What has been learned: clauses, each watched by two of its statements (M. Moskewicz and others,
 * "Chaff", DAC 2001).
 */
export class Nogoods {
  readonly #clauses: Clause[] = [];
  readonly #usedAt: number[] = [];
  readonly #watching: number[][];
  #clock = 0;

  constructor(bounds: number) {
    this.#watching = Array.from({ length: bounds }, () => []);
  }

  get count(): number {
    return this.#clauses.length;
  }

  /** Adds a clause whose first statement follows now, and whose second was refuted last. */
  add(clause: Clause): number {
    const id = this.#clauses.length;
    this.#clauses.push(clause);
    this.#usedAt.push(this.#clock++);
    this.#watch(id, 0);
    this.#watch(id, 2);
    return id;
  }

  #watch(id: number, place: number): void {
    const bound = opposite(cell(this.#clauses[id] ?? DROPPED, place));
    // Refuted from this value of the bound on; before that, nothing is to be done.
    this.#watching[bound]?.push(id, 1 - cell(this.#clauses[id] ?? DROPPED, place + 1));
  }

  /** Draws what follows from a bound that has risen; false at a contradiction. */
  propagate(trail: Trail, bound: number): boolean {
    const watching = this.#watching[bound] ?? [];
    let kept = 0;
    let isConsistent = true;
    const value = cell(trail.value, bound);
    for (let i = 0; i < watching.length; i += 2) {
      const id = watching[i] ?? 0;
      const refutedFrom = watching[i + 1] ?? 0;
      const clause = this.#clauses[id] ?? DROPPED;
      const isTouched = isConsistent && refutedFrom <= value;
      if (isTouched && this.#movesOn(trail, id, clause, opposite(bound))) continue;
      watching[kept++] = id;
      watching[kept++] = refutedFrom;
      if (!isTouched || !this.#isUnit(trail, clause, opposite(bound))) continue;
      isConsistent = trail.push(cell(clause, 0), cell(clause, 1), reasonOf('nogood', id));
    }
    watching.length = kept;
    return isConsistent;
  }

  /** Looks for another statement to watch in place of one that is refuted. */
  #movesOn(trail: Trail, id: number, clause: Clause, refuted: number): boolean {
    const place = cell(clause, 0) === refuted ? 0 : 2;
    if (!isRefuted(trail, clause, place)) return false;
    if (place === 0) exchange(clause, 0, 2);
    if (trail.holds(cell(clause, 0), cell(clause, 1))) return false;
    for (let other = 4; other < clause.length; other += 2) {
      if (isRefuted(trail, clause, other)) continue;
      exchange(clause, 2, other);
      this.#watch(id, 2);
      return true;
    }
    return false;
  }

  #isUnit(trail: Trail, clause: Clause, refuted: number): boolean {
    return (
      cell(clause, 2) === refuted &&
      isRefuted(trail, clause, 2) &&
      !trail.holds(cell(clause, 0), cell(clause, 1))
    );
  }

  explain(id: number, bound: number, say: Say): void {
    this.#usedAt[id] = this.#clock++;
    const clause = this.#clauses[id] ?? DROPPED;
    for (let place = 0; place < clause.length; place += 2) {
      const other = cell(clause, place);
      if (other !== bound) say(opposite(other), 1 - cell(clause, place + 1));
    }
  }

  /** Forgets the half that was of use the longest ago; only while nothing rests on any of them. */
  forgetHalf(): void {
    const byUse = this.#usedAt.toSorted((a, b) => a - b);
    const since = byUse[byUse.length >> 1] ?? 0;
    const kept = this.#clauses.filter((_, id) => (this.#usedAt[id] ?? 0) >= since);
    const uses = this.#usedAt.filter((at) => at >= since);
    for (const watching of this.#watching) watching.length = 0;
    this.#clauses.length = 0;
    this.#usedAt.length = 0;
    for (const [id, clause] of kept.entries()) {
      this.#clauses.push(clause);
      this.#usedAt.push(uses[id] ?? 0);
      this.#watch(id, 0);
      this.#watch(id, 2);
    }
  }
}

function isRefuted(trail: Trail, clause: Clause, place: number): boolean {
  return trail.holds(opposite(cell(clause, place)), 1 - cell(clause, place + 1));
}

function exchange(clause: Clause, a: number, b: number): void {
  const bound = cell(clause, a);
  const value = cell(clause, a + 1);
  clause[a] = cell(clause, b);
  clause[a + 1] = cell(clause, b + 1);
  clause[b] = bound;
  clause[b + 1] = value;
}
