import type { Arcs, Groups } from './network.ts';
import { at } from './network.ts';

/** No arc set this bound: it was given. */
export const GIVEN = -1;

/**
 * The window of each node: the earliest and latest time that the arcs leave it, given the bounds
 * and what has been fixed. Any time within its window that a node is then fixed at can be
 * completed to times that keep all arcs (Dechter, Meiri and Pearl, Artificial Intelligence 49,
 * 1991). The arcs must have no positive cycle.
 */
export class Windows {
  readonly loS: Int32Array;
  readonly hiS: Int32Array;
  /** The arc that set each bound, or `GIVEN`: followed back, it says why. */
  readonly loBy: Int32Array;
  readonly hiBy: Int32Array;
  /** Whether some node has no time left; it has none again only after `copyFrom`. */
  isBroken = false;
  readonly #arcs: Arcs;
  readonly #queue: number[] = [];
  readonly #queued: Uint8Array;

  constructor(arcs: Arcs, loS: Int32Array, hiS: Int32Array) {
    this.#arcs = arcs;
    this.loS = loS.slice();
    this.hiS = hiS.slice();
    this.loBy = new Int32Array(loS.length).fill(GIVEN);
    this.hiBy = new Int32Array(loS.length).fill(GIVEN);
    this.#queued = new Uint8Array(loS.length);
    const all = Array.from(loS.keys());
    this.#raise(all);
    this.#lower(all);
  }

  /** Becomes what other windows on the same arcs are. */
  copyFrom(other: Windows): void {
    this.loS.set(other.loS);
    this.hiS.set(other.hiS);
    this.loBy.set(other.loBy);
    this.hiBy.set(other.hiBy);
    this.isBroken = other.isBroken;
  }

  /** Lets a node be no earlier. */
  notBefore(node: number, timeS: number): void {
    if (timeS <= at(this.loS, node)) return;
    this.loS[node] = timeS;
    this.loBy[node] = GIVEN;
    this.#notice(node);
    this.#raise([node]);
  }

  /** Narrows a node's window to one time, and every other window accordingly. */
  fix(node: number, timeS: number): void {
    this.notBefore(node, timeS);
    if (timeS < at(this.hiS, node)) {
      this.hiS[node] = timeS;
      this.hiBy[node] = GIVEN;
      this.#notice(node);
      this.#lower([node]);
    }
  }

  #notice(node: number): void {
    if (at(this.loS, node) > at(this.hiS, node)) this.isBroken = true;
  }

  #raise(from: readonly number[]): void {
    const { to, weightS, out } = this.#arcs;
    this.#spread(from, out, (arc, node) => {
      const head = at(to, arc);
      const asked = at(this.loS, node) + at(weightS, arc);
      if (asked <= at(this.loS, head)) return GIVEN;
      this.loS[head] = asked;
      this.loBy[head] = arc;
      this.#notice(head);
      return head;
    });
  }

  #lower(from: readonly number[]): void {
    const { from: tails, weightS, into } = this.#arcs;
    this.#spread(from, into, (arc, node) => {
      const tail = at(tails, arc);
      const asked = at(this.hiS, node) - at(weightS, arc);
      if (asked >= at(this.hiS, tail)) return GIVEN;
      this.hiS[tail] = asked;
      this.hiBy[tail] = arc;
      this.#notice(tail);
      return tail;
    });
  }

  /** First in, first out; `tighten` answers with the node it changed, or `GIVEN`. */
  #spread(
    from: readonly number[],
    groups: Groups,
    tighten: (arc: number, node: number) => number,
  ): void {
    const queue = this.#queue;
    queue.length = 0;
    for (const node of from) {
      queue.push(node);
      this.#queued[node] = 1;
    }
    for (let head = 0; head < queue.length; head++) {
      const node = at(queue, head);
      this.#queued[node] = 0;
      for (let i = at(groups.first, node); i < at(groups.first, node + 1); i++) {
        const changed = tighten(at(groups.items, i), node);
        if (changed < 0 || this.#queued[changed] === 1) continue;
        this.#queued[changed] = 1;
        queue.push(changed);
      }
    }
  }
}
