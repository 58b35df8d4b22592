import type { Facts } from './facts.ts';
import { DONE, WAITING } from './facts.ts';
import { Heap } from './heap.ts';
import type { LiveNet } from './live-net.ts';
import { at } from './network.ts';

/** A floor that yielded to no lag: it is as published, or a wait's end at its longest. */
export const NO_CEILING = -1;

/**
 * How early each time may be on account of the plan: as published, for nothing published moves
 * forward by itself, except where something before it has happened early and a maximum lag, or the
 * longest a wait may be, would be broken by keeping to the plan. Floors follow facts alone, never
 * projected times, so that they hang on nothing that hangs on them.
 */
export class Floors {
  readonly floorS: Int32Array;
  /** The ceiling that a floor yielded to. */
  readonly ceiling: Int32Array;
  asked = 0;
  readonly #net: LiveNet;
  readonly #facts: Facts;
  readonly #queue: Heap;

  constructor(net: LiveNet, facts: Facts) {
    this.#net = net;
    this.#facts = facts;
    this.floorS = net.plannedS.slice();
    this.ceiling = new Int32Array(net.size * 2).fill(NO_CEILING);
    this.#queue = new Heap(net.size);
    for (const activity of net.order) this.#workOut(activity);
  }

  /** The same floors, following other facts from here on. */
  copy(facts: Facts): Floors {
    const copy = new Floors(this.#net, facts);
    copy.floorS.set(this.floorS);
    copy.ceiling.set(this.ceiling);
    return copy;
  }

  /** Works out what a fact or a length changes; tells every node with another floor. */
  follow(activity: number, tell: (node: number) => void): void {
    const { rank, ceilings } = this.#net;
    this.#queue.set(activity, at(rank, activity));
    let isNews = true;
    while (this.#queue.size > 0) {
      const next = this.#queue.pop();
      const [near, far] = [next * 2, next * 2 + 1];
      const [nearS, farS] = [this.floorS[near], this.floorS[far]];
      this.#workOut(next);
      if (this.floorS[near] !== nearS) tell(near);
      if (this.floorS[far] !== farS) tell(far);
      const isMoved = this.floorS[near] !== nearS || this.floorS[far] !== farS;
      if (!isMoved && !isNews) continue;
      isNews = false;
      for (const node of [near, far]) {
        for (let i = at(ceilings.out.first, node); i < at(ceilings.out.first, node + 1); i++) {
          const to = at(ceilings.to, at(ceilings.out.items, i)) >> 1;
          this.#queue.set(to, at(rank, to));
        }
      }
    }
  }

  #workOut(activity: number): void {
    this.asked++;
    const { plannedS, isWork } = this.#net;
    const [near, far] = [activity * 2, activity * 2 + 1];
    this.#lower(near, at(plannedS, near));
    const beganS = this.#timeOf(near);
    if (isWork[activity] === 1) {
      this.#set(far, beganS + at(this.#facts.minS, activity), NO_CEILING);
      return;
    }
    const longestS = beganS + at(this.#facts.maxS, activity);
    this.#lower(far, Math.min(at(plannedS, far), longestS));
  }

  #lower(node: number, fromS: number): void {
    const { ceilings } = this.#net;
    let floorS = fromS;
    let by = NO_CEILING;
    for (let i = at(ceilings.into.first, node); i < at(ceilings.into.first, node + 1); i++) {
      const ceiling = at(ceilings.into.items, i);
      const mostS = this.#timeOf(at(ceilings.from, ceiling)) + at(ceilings.mostS, ceiling);
      if (mostS < floorS) [floorS, by] = [mostS, ceiling];
    }
    this.#set(node, floorS, by);
  }

  #set(node: number, floorS: number, by: number): void {
    this.floorS[node] = floorS;
    this.ceiling[node] = by;
  }

  /** When it happened, or else its floor. */
  #timeOf(node: number): number {
    const activity = node >> 1;
    const stage = at(this.#facts.stage, activity);
    if ((node & 1) === 0) {
      return stage === WAITING ? at(this.floorS, node) : at(this.#facts.startS, activity);
    }
    if (stage === DONE) return at(this.#facts.endS, activity);
    return at(this.floorS, node);
  }
}
