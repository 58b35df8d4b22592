import { must } from '../kernel/index.ts';
import { orderOn } from './chain.ts';
import { DONE, type Facts, WAITING } from './facts.ts';
import type { LiveArcs } from './live-arcs.ts';
import type { Link } from './model.ts';
import { at, endOf, startOf } from './network.ts';
import type { DecidedLink, Order, Published } from './published.ts';
import type { Turn } from './turn.ts';

/** An order that is not as decided, since something was begun out of turn. */
type Changed = { readonly links: readonly Link[]; readonly arcs: readonly number[] };

/**
 * The order that holds now. It is the one decided, except where something was begun while what it
 * should have waited for is not done: there the order is made anew, first what has begun and then
 * the others as decided, so that nobody is sent where somebody is already. Once the tap is taken
 * back, or what was passed over is done, the decided order holds again.
 */
export class Turns {
  readonly #published: Published;
  readonly #facts: Facts;
  readonly #arcs: LiveArcs;
  /** By order: what it was changed to, if it was. */
  readonly #changed: (Changed | undefined)[];
  /** The arcs of links that are no decided ones, by what they say. */
  readonly #added: Map<string, number>;
  /** What `links` last gave, until another order holds. */
  #standing: readonly Link[] | null = null;

  private constructor(
    published: Published,
    facts: Facts,
    arcs: LiveArcs,
    changed: (Changed | undefined)[],
    added: Map<string, number>,
  ) {
    this.#published = published;
    this.#facts = facts;
    this.#arcs = arcs;
    this.#changed = changed;
    this.#added = added;
  }

  /** Looks at everything for the first time; `arcs`, as decided, are changed from here on. */
  static of(published: Published, facts: Facts, arcs: LiveArcs): Turns {
    const asDecided = published.orders.map(() => undefined);
    const turns = new Turns(published, facts, arcs, asDecided, new Map());
    for (const order of published.orders.keys()) turns.#lookAt(order, () => {});
    return turns;
  }

  /** The same turns, going their own way with copies of facts and arcs. */
  copy(facts: Facts, arcs: LiveArcs): Turns {
    return new Turns(this.#published, facts, arcs, [...this.#changed], new Map(this.#added));
  }

  /** All links that hold now: the same list for as long as they do. */
  get links(): readonly Link[] {
    this.#standing ??= this.#linksStanding();
    return this.#standing;
  }

  #linksStanding(): readonly Link[] {
    const { links, orders } = this.#published;
    if (this.#changed.every((each) => each === undefined)) return links;
    const gone = new Set(
      orders.flatMap((order, i) =>
        this.#changed[i] ? order.links.map(({ number }) => number) : [],
      ),
    );
    return [
      ...links.filter((_, number) => !gone.has(number)),
      ...this.#changed.flatMap((each) => each?.links ?? []),
    ];
  }

  /** Looks again after an activity has begun or ended; tells of each arc that came or went. */
  follow(activity: number, tell: (arc: number) => void): void {
    for (const order of this.#published.ordersOf[activity] ?? []) this.#lookAt(order, tell);
  }

  #lookAt(number: number, tell: (arc: number) => void): void {
    const order = must(this.#published.orders[number], 'an order');
    const before = this.#changed[number];
    if (!this.#isOutOfTurn(order)) {
      if (!before) return;
      this.#switch(before.arcs, this.#decidedArcs(order), tell);
      this.#changed[number] = undefined;
      this.#standing = null;
      return;
    }
    const links = this.#linksNow(order);
    if (before && isSame(before.links, links)) return;
    const arcs = links.map((link) => this.#arcFor(number, link));
    this.#switch(before?.arcs ?? this.#decidedArcs(order), arcs, tell);
    this.#changed[number] = { links, arcs };
    this.#standing = null;
  }

  /** Whether anything has begun though what it waits for is not done. */
  #isOutOfTurn({ links }: Order): boolean {
    const { stage, startS: began } = this.#facts;
    return links.some((link) => {
      const { from, to } = link;
      const isEarly = stage[to] !== WAITING && stage[from] !== DONE;
      return isEarly && at(began, to) < this.#inTurnFromS(link);
    });
  }

  /**
   * From when on the second of a link may begin though the first is not done. Where a clash comes
   * only late in it, that may be before the first is over, and then counts by what was decided.
   */
  #inTurnFromS({ from, number }: DecidedLink): number {
    const { gapS, after } = must(this.#published.links[number], 'a link');
    if (gapS >= 0) return Number.POSITIVE_INFINITY;
    const { startS, endS } = must(this.#published.decidedS[from], 'decided');
    if (after !== 'start') return endS + gapS;
    return (this.#facts.stage[from] === WAITING ? startS : at(this.#facts.startS, from)) + gapS;
  }

  #linksNow({ sharing }: Order): Link[] {
    const { problem, index } = this.#published;
    const idOf = (activity: number) => must(problem.activities[activity], 'an activity').id;
    const isOver = ({ to }: Link) => this.#facts.stage[index.activity(to)] === DONE;
    return orderOn(sharing, this.#turnOf(sharing.users), idOf).filter((link) => !isOver(link));
  }

  /** What has begun comes first, and what runs is not over before anything else begins. */
  #turnOf(users: readonly { readonly activity: number }[]): Turn {
    const { stage, startS: began, endS: ended } = this.#facts;
    const { decidedS } = this.#published;
    const startS: number[] = [];
    const endS: number[] = [];
    let overS = 0;
    let firstS = Number.POSITIVE_INFINITY;
    for (const { activity } of users) {
      if (stage[activity] === WAITING) firstS = Math.min(firstS, decidedS[activity]?.startS ?? 0);
      else overS = Math.max(overS, at(stage[activity] === DONE ? ended : began, activity) + 1);
    }
    const byS = overS - firstS;
    for (const { activity } of users) {
      const isWaiting = stage[activity] === WAITING;
      const decided = must(decidedS[activity], 'decided');
      startS[activity] = isWaiting ? decided.startS + byS : at(began, activity);
      const overAtS = stage[activity] === DONE ? at(ended, activity) : overS;
      endS[activity] = isWaiting ? decided.endS + byS : overAtS;
    }
    return { startS, endS, rank: [] };
  }

  #switch(off: readonly number[], on: readonly number[], tell: (arc: number) => void): void {
    const stays = new Set(on);
    for (const arc of off) {
      if (stays.has(arc)) continue;
      this.#arcs.off[arc] = 1;
      tell(arc);
    }
    for (const arc of on) {
      if (this.#arcs.off[arc] === 0 && off.includes(arc)) continue;
      this.#arcs.off[arc] = 0;
      tell(arc);
    }
  }

  #decidedArcs({ links }: Order): number[] {
    return links.map(({ number }) => this.#arcs.arcOfLink(number));
  }

  /** The arc of a link: a decided one if it says the same, else one that was added for it. */
  #arcFor(order: number, link: Link): number {
    const { links, index, orders } = this.#published;
    const decided = must(orders[order], 'an order').links.find(({ number }) =>
      isSameLink(must(links[number], 'link'), link),
    );
    if (decided) return this.#arcs.arcOfLink(decided.number);
    // One for each order: two may say the same, and one of them no more.
    const key = [order, link.from, link.to, link.resource, link.gapS, link.after ?? 'end'].join(
      ' ',
    );
    const known = this.#added.get(key);
    if (known !== undefined) return known;
    const from = index.activity(link.from);
    const arc = this.#arcs.add({
      from: link.after === 'start' ? startOf(from) : endOf(from),
      to: startOf(index.activity(link.to)),
      weightS: link.gapS,
      back: false,
      lag: -1,
      link,
    });
    this.#added.set(key, arc);
    return arc;
  }
}

function isSame(a: readonly Link[], b: readonly Link[]): boolean {
  return a.length === b.length && a.every((link, i) => isSameLink(link, must(b[i], 'a link')));
}

function isSameLink(a: Link, b: Link): boolean {
  return (
    a.from === b.from &&
    a.to === b.to &&
    a.resource === b.resource &&
    a.gapS === b.gapS &&
    a.after === b.after
  );
}
