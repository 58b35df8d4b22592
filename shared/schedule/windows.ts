import type { Arcs, Groups } from './network.ts';
import { at, endOf, startOf } from './network.ts';

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
  readonly #arcs: Arcs;
  readonly #queue: number[] = [];
  readonly #queued: Uint8Array;
  /** Nodes that have no time left. */
  readonly #broken: Set<number>;

  private constructor(arcs: Arcs, bounds: Pick<Windows, 'loS' | 'hiS' | 'loBy' | 'hiBy'>) {
    this.#arcs = arcs;
    this.loS = bounds.loS.slice();
    this.hiS = bounds.hiS.slice();
    this.loBy = bounds.loBy.slice();
    this.hiBy = bounds.hiBy.slice();
    this.#queued = new Uint8Array(bounds.loS.length);
    this.#broken = new Set();
  }

  /** What arcs and bounds leave before anything is fixed. */
  static of(arcs: Arcs, loS: Int32Array, hiS: Int32Array): Windows {
    const given = new Int32Array(loS.length).fill(GIVEN);
    const windows = new Windows(arcs, { loS, hiS, loBy: given, hiBy: given });
    const all = Array.from(loS.keys());
    windows.#raise(all);
    windows.#lower(all);
    return windows;
  }

  copy(): Windows {
    const copy = new Windows(this.#arcs, this);
    for (const node of this.#broken) copy.#broken.add(node);
    return copy;
  }

  /** Whether some node has no time left. */
  get isBroken(): boolean {
    return this.#broken.size > 0;
  }

  /** Makes the windows of activities what they are in other windows on the same arcs. */
  copyTimes(other: Windows, activities: readonly number[]): void {
    for (const activity of activities) {
      this.#copyNode(other, startOf(activity));
      this.#copyNode(other, endOf(activity));
    }
  }

  #copyNode(other: Windows, node: number): void {
    this.loS[node] = at(other.loS, node);
    this.hiS[node] = at(other.hiS, node);
    this.loBy[node] = at(other.loBy, node);
    this.hiBy[node] = at(other.hiBy, node);
    if (other.#broken.has(node)) this.#broken.add(node);
    else if (this.#broken.size > 0) this.#broken.delete(node);
  }

  /** Lets a node be no earlier. */
  notBefore(node: number, timeS: number): void {
    if (timeS <= at(this.loS, node)) return;
    this.loS[node] = timeS;
    this.loBy[node] = GIVEN;
    this.#notice(node);
    this.#raise([node]);
  }

  /** Lets a node be no later. */
  notAfter(node: number, timeS: number): void {
    if (timeS >= at(this.hiS, node)) return;
    this.hiS[node] = timeS;
    this.hiBy[node] = GIVEN;
    this.#notice(node);
    this.#lower([node]);
  }

  /** Narrows a node's window to one time, and every other window accordingly. */
  fix(node: number, timeS: number): void {
    this.notBefore(node, timeS);
    this.notAfter(node, timeS);
  }

  #notice(node: number): void {
    if (at(this.loS, node) > at(this.hiS, node)) this.#broken.add(node);
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
