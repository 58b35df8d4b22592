import { must, pickBelow, type Random, seeded } from '../../shared/kernel/index.ts';

/** Everything left to chance in one run, drawn from one seed. */
export class Chance {
  readonly #random: Random;

  constructor(random: Random) {
    this.#random = random;
  }

  static ofSeed(seed: number): Chance {
    return new Chance(seeded(seed));
  }

  /** A stream of its own, so that what one part draws does not shift what another gets. */
  fork(): Chance {
    return Chance.ofSeed(pickBelow(this.#random, 2 ** 32));
  }

  /** From `least` up to and without `most`. */
  between(least: number, most: number): number {
    return least + this.#random() * (most - least);
  }

  happens(share: number): boolean {
    return this.#random() < share;
  }

  /** Whole, from 0 up to and without `below`. */
  below(below: number): number {
    return pickBelow(this.#random, below);
  }

  oneOf<T>(items: readonly T[]): T {
    return must(items[this.below(items.length)], 'one of nothing');
  }

  /** One of the kinds, each as likely as its weight. */
  weighted<Kind extends string>(weights: Readonly<Record<Kind, number>>): Kind {
    const kinds = Object.keys(weights) as Kind[];
    let left = this.between(
      0,
      kinds.reduce((sum, kind) => sum + weights[kind], 0),
    );
    for (const kind of kinds) {
      left -= weights[kind];
      if (left < 0) return kind;
    }
    return must(kinds.at(-1), 'one of no kinds');
  }
}
