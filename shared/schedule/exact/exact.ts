import type { Net, Slot } from '../net.ts';
import { type Arc, at, endOf, startOf } from '../network.ts';
import type { Measure } from '../worth.ts';
import { latestTimes } from './latest-times.ts';
import { firstMeeting } from './meetings.ts';
import { twinsOf, type Way, waysOf } from './ways.ts';

export type ExactOptions = {
  /** Only what has less of `aheadS` than this is looked for. */
  readonly belowS?: number;
  /** It gives up after so many nodes of the tree. */
  readonly nodesMost: number;
  readonly shouldStop?: () => boolean;
};

export type Exact = {
  /** `proven`: `slots` is as good as can be; without any, there is none below what is asked. */
  readonly status: 'proven' | 'given-up';
  readonly slots: readonly Slot[] | undefined;
  readonly nodes: number;
};

/**
 * The schedule of a small net with the least `aheadS`, proven: everything is as late as can be, and
 * where that puts too many in one place, each way out is tried (branching as E. Demeulemeester and
 * W. Herroelen, Management Science 38, 1992, and B. De Reyck and W. Herroelen, EJOR 111, 1998).
 * A way to do it is chosen where nothing else is left to decide.
 */
export function solveExactly(net: Net, measure: Measure, options: ExactOptions): Exact {
  return new Tree(net, measure, options).run();
}

type Node = { readonly ways: readonly (Way | undefined)[]; readonly orders: readonly Arc[] };
type Bounded = Node & { readonly timeS: Int32Array; readonly aheadS: number };

class Tree {
  readonly #net: Net;
  readonly #measure: Measure;
  readonly #options: ExactOptions;
  readonly #ways: readonly (readonly Way[])[];
  readonly #twins: Int32Array;
  #bestS: number;
  #slots: readonly Slot[] | undefined;
  #nodes = 0;
  #gaveUp = false;

  constructor(net: Net, measure: Measure, options: ExactOptions) {
    this.#net = net;
    this.#measure = measure;
    this.#options = options;
    this.#ways = net.modes.map((_, activity) => waysOf(net, activity));
    this.#twins = twinsOf(net);
    this.#bestS = options.belowS ?? Number.POSITIVE_INFINITY;
  }

  run(): Exact {
    const only = this.#ways.map((ways) => (ways.length === 1 ? ways[0] : undefined));
    const root = this.#bounded({ ways: only, orders: [] });
    if (root) this.#explore(root);
    const status = this.#gaveUp ? 'given-up' : 'proven';
    return { status, slots: this.#slots, nodes: this.#nodes };
  }

  #explore(node: Bounded): void {
    if (this.#nodes >= this.#options.nodesMost || this.#options.shouldStop?.()) this.#gaveUp = true;
    if (this.#gaveUp || node.aheadS >= this.#bestS) return;
    this.#nodes++;
    const out = firstMeeting(this.#net, node.ways, node.timeS);
    const below = out
      ? out.map((arcs) => ({ ways: node.ways, orders: [...node.orders, ...arcs] }))
      : this.#withOneMoreWay(node);
    if (!below) {
      this.#bestS = node.aheadS;
      this.#slots = node.ways.map((way, activity) => this.#slot(way as Way, activity, node.timeS));
      return;
    }
    const children = below.flatMap((child) => this.#bounded(child) ?? []);
    for (const child of children.sort((a, b) => a.aheadS - b.aheadS)) this.#explore(child);
  }

  #bounded(node: Node): Bounded | undefined {
    const timeS = latestTimes(this.#net, node.ways, node.orders);
    if (!timeS) return undefined;
    const { weights, dueS } = this.#measure;
    let aheadS = 0;
    for (let i = 0; i < this.#net.size; i++) {
      aheadS += at(weights, i) * (at(dueS, i) - at(timeS, endOf(i)));
    }
    return aheadS < this.#bestS ? { ...node, timeS, aheadS } : undefined;
  }

  /** The ways to do one that has none yet: the one with the fewest; `undefined` if all have one. */
  #withOneMoreWay({ ways, orders }: Node): Node[] | undefined {
    let next = -1;
    ways.forEach((way, activity) => {
      if (way) return;
      const count = this.#ways[activity]?.length ?? 0;
      if (next < 0 || count < (this.#ways[next]?.length ?? 0)) next = activity;
    });
    if (next < 0) return undefined;
    const used = new Set(ways.flatMap((way) => way?.uses ?? []));
    const tried = new Set<string>();
    return (this.#ways[next] ?? []).flatMap((way) => {
      const kinds = way.uses.map((use) => (used.has(use) ? use : -1 - at(this.#twins, use)));
      const key = `${way.mode.index} ${patternOf(kinds, way.uses)}`;
      if (tried.has(key)) return [];
      tried.add(key);
      return [{ ways: ways.with(next, way), orders }];
    });
  }

  #slot({ mode, uses }: Way, activity: number, timeS: Int32Array): Slot {
    return { mode, uses, startS: at(timeS, startOf(activity)), endS: at(timeS, endOf(activity)) };
  }
}

/** The kinds in order, and which of the needs fall on the same resource. */
const patternOf = (kinds: readonly number[], uses: readonly number[]) =>
  `${kinds.join()} ${uses.map((use) => uses.indexOf(use)).join()}`;
