import { at } from './network.ts';

/**
 * The parts of a network that nothing joins: a change stays within its part. Parts only grow
 * together (a set of trees, joined at their roots).
 */
export class Parts {
  readonly #parent: Int32Array;

  constructor(parent: Int32Array) {
    this.#parent = parent;
  }

  /** Everything by itself. */
  static of(size: number): Parts {
    return new Parts(Int32Array.from({ length: size }, (_, activity) => activity));
  }

  copy(): Parts {
    return new Parts(this.#parent.slice());
  }

  /** One of a part stands for it. */
  rootOf(activity: number): number {
    const parent = this.#parent;
    let root = activity;
    while (at(parent, root) !== root) {
      parent[root] = at(parent, at(parent, root));
      root = at(parent, root);
    }
    return root;
  }

  join(a: number, b: number): void {
    this.#parent[this.rootOf(a)] = this.rootOf(b);
  }
}
