import type { Arcs } from './network.ts';
import { activityOf, at, endOf, startOf } from './network.ts';

/**
 * Which activities are over before which others start, whatever the times: by lags that are not
 * negative, by lengths, and by the links told so far. Sets of bits, made when first asked for.
 */
export class Closure {
  readonly #arcs: Arcs;
  readonly #words: number;
  readonly #sets: (Uint32Array | undefined)[];
  readonly #links: number[][];

  constructor(arcs: Arcs, size: number) {
    this.#arcs = arcs;
    this.#words = (size + 31) >> 5;
    this.#sets = new Array(size * 2);
    this.#links = Array.from({ length: size }, () => []);
  }

  /** Whether `first` must be over before `then` starts. */
  precedes(first: number, then: number): boolean {
    const word = this.#setOf(startOf(then))[first >> 5] ?? 0;
    return ((word >>> (first & 31)) & 1) === 1;
  }

  /** Tells that `then` starts after `first` ends; best told in the order of starts. */
  link(first: number, then: number): void {
    this.#links[then]?.push(first);
    const set = this.#sets[startOf(then)];
    if (set) this.#include(set, endOf(first));
  }

  #setOf(node: number): Uint32Array {
    const known = this.#sets[node];
    if (known) return known;
    const set = new Uint32Array(this.#words);
    // Put by at once, so that nodes which hold one another at no distance end here.
    this.#sets[node] = set;
    const { into, from, weightS } = this.#arcs;
    for (let i = at(into.first, node); i < at(into.first, node + 1); i++) {
      const arc = at(into.items, i);
      if (at(weightS, arc) >= 0) this.#include(set, at(from, arc));
    }
    if (node === startOf(activityOf(node))) {
      for (const first of this.#links[activityOf(node)] ?? []) this.#include(set, endOf(first));
    }
    return set;
  }

  #include(set: Uint32Array, node: number): void {
    const other = this.#setOf(node);
    for (let i = 0; i < set.length; i++) set[i] = (set[i] ?? 0) | (other[i] ?? 0);
    const activity = activityOf(node);
    if (node === endOf(activity)) {
      set[activity >> 5] = (set[activity >> 5] ?? 0) | (1 << (activity & 31));
    }
  }
}
