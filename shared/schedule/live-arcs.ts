import type { Link } from './model.ts';
import { activityOf, at } from './network.ts';
import { Parts } from './parts.ts';

/** No arc, at the end of a list of arcs. */
const NO_ARC = -1;

export type LiveArc = {
  readonly from: number;
  readonly to: number;
  readonly weightS: number;
  readonly back: boolean;
  /** The lag it comes from, by its place in the problem; -1 for a link. */
  readonly lag: number;
  readonly link?: Link;
};

/**
 * The arcs of a live day. Unlike those of a problem they change: links come and go when things are
 * begun out of turn. So each node has its arcs in a list that can grow, and an arc that does not
 * hold now is off and stays where it is.
 */
export class LiveArcs {
  count = 0;
  /** Links that were added since; with them, arcs may come round where they did not before. */
  added = 0;
  from: Int32Array;
  to: Int32Array;
  weightS: Int32Array;
  /** 1 for a maximum lag: it runs against the order in which things are done. */
  back: Uint8Array;
  off: Uint8Array;
  lag: Int32Array;
  readonly links: (Link | undefined)[] = [];
  #firstLink = 0;
  /** What arcs join, whether they hold now or not. */
  readonly parts: Parts;
  /** The first arc into and out of each node, and the next of each arc. */
  readonly firstInto: Int32Array;
  readonly firstOut: Int32Array;
  nextInto: Int32Array;
  nextOut: Int32Array;

  constructor(nodes: number, capacity: number, parts: Parts) {
    this.parts = parts;
    this.from = new Int32Array(capacity);
    this.to = new Int32Array(capacity);
    this.weightS = new Int32Array(capacity);
    this.back = new Uint8Array(capacity);
    this.off = new Uint8Array(capacity);
    this.lag = new Int32Array(capacity);
    this.firstInto = new Int32Array(nodes).fill(NO_ARC);
    this.firstOut = new Int32Array(nodes).fill(NO_ARC);
    this.nextInto = new Int32Array(capacity);
    this.nextOut = new Int32Array(capacity);
  }

  /** Lags, and then the links that were decided; each node keeps its arcs in this order. */
  static of(lags: readonly LiveArc[], links: readonly LiveArc[], nodes: number): LiveArcs {
    const list = [...lags, ...links];
    const arcs = new LiveArcs(nodes, list.length, Parts.of(nodes / 2));
    arcs.count = list.length;
    arcs.#firstLink = lags.length;
    list.reverse().forEach((each, i) => {
      arcs.#put(list.length - 1 - i, each);
    });
    return arcs;
  }

  /** The arc of a decided link, by its place among the links. */
  arcOfLink(number: number): number {
    return this.#firstLink + number;
  }

  /**
   * Adds one, among those that were added into the same node by where it comes from: in whatever
   * order they were added, they are gone through in the same.
   */
  add(added: LiveArc): number {
    const arc = this.count++;
    this.added++;
    if (arc >= this.from.length) this.#grow();
    this.#put(arc, added);
    const after = this.#lastBefore(added);
    if (after === NO_ARC) return arc;
    this.firstInto[added.to] = at(this.nextInto, arc);
    this.nextInto[arc] = at(this.nextInto, after);
    this.nextInto[after] = arc;
    return arc;
  }

  #lastBefore({ from, to, weightS }: LiveArc): number {
    const decided = this.count - this.added;
    let last = NO_ARC;
    // The new one is first now.
    let arc = at(this.nextInto, at(this.firstInto, to));
    for (; arc !== NO_ARC; arc = at(this.nextInto, arc)) {
      const isBefore =
        arc < decided ||
        at(this.from, arc) < from ||
        (at(this.from, arc) === from && at(this.weightS, arc) <= weightS);
      if (!isBefore) break;
      last = arc;
    }
    return last;
  }

  #put(arc: number, { from, to, weightS, back, lag, link }: LiveArc): void {
    this.from[arc] = from;
    this.to[arc] = to;
    this.weightS[arc] = weightS;
    this.back[arc] = back ? 1 : 0;
    this.lag[arc] = lag;
    this.links[arc] = link;
    this.parts.join(activityOf(from), activityOf(to));
    this.nextInto[arc] = at(this.firstInto, to);
    this.firstInto[to] = arc;
    this.nextOut[arc] = at(this.firstOut, from);
    this.firstOut[from] = arc;
  }

  copy(): LiveArcs {
    const copy = new LiveArcs(this.firstInto.length, this.from.length, this.parts.copy());
    copy.count = this.count;
    copy.added = this.added;
    copy.#take(this);
    copy.firstInto.set(this.firstInto);
    copy.firstOut.set(this.firstOut);
    copy.links.push(...this.links);
    copy.#firstLink = this.#firstLink;
    return copy;
  }

  #grow(): void {
    const wider = new LiveArcs(0, this.from.length * 2 + 64, this.parts);
    wider.#take(this);
    this.#become(wider);
  }

  #take(other: LiveArcs): void {
    this.from.set(other.from);
    this.to.set(other.to);
    this.weightS.set(other.weightS);
    this.back.set(other.back);
    this.off.set(other.off);
    this.lag.set(other.lag);
    this.nextInto.set(other.nextInto);
    this.nextOut.set(other.nextOut);
  }

  #become({ from, to, weightS, back, off, lag, nextInto, nextOut }: LiveArcs): void {
    Object.assign(this, { from, to, weightS, back, off, lag, nextInto, nextOut });
  }
}
