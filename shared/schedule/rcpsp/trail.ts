import { cell } from './cell.ts';

/**
 * What is known of each variable, as two bounds that only ever rise: bound `2v` says "at least so
 * much", bound `2v + 1` says the same of the negative, so "at most". A statement is a bound with a
 * value; its contrary is the other bound of the variable with `1 - value`.
 */
export const atLeast = (variable: number) => variable * 2;
/** @example atMost(3) //=> 7 */
export const atMost = (variable: number) => variable * 2 + 1;
/** The other bound of the same variable. @example opposite(7) //=> 6 */
export const opposite = (bound: number) => bound ^ 1;

/** A reason that needs no further one: a decision, or what is given from the outset. */
export const NO_REASON = -1;

/** Told of each change of a bound, and of each that is taken back, last first. */
export type Watcher = {
  moved(bound: number, old: number, value: number): void;
  takenBack(bound: number, old: number, value: number): void;
};

/** All changes of bounds in their order, with why, so that they can be taken back. */
export class Trail {
  readonly value: Int32Array;
  readonly #watcher: Watcher;
  readonly #last: Int32Array;
  #bound = new Int32Array(1024);
  #old = new Int32Array(1024);
  #before = new Int32Array(1024);
  #reason = new Int32Array(1024);
  readonly #levels: number[] = [];
  size = 0;

  constructor(value: Int32Array, watcher: Watcher) {
    this.value = value;
    this.#watcher = watcher;
    this.#last = new Int32Array(value.length).fill(-1);
  }

  get level(): number {
    return this.#levels.length;
  }

  /** Where the present level begins. */
  get levelStart(): number {
    return this.#levels[this.#levels.length - 1] ?? 0;
  }

  holds(bound: number, value: number): boolean {
    return cell(this.value, bound) >= value;
  }

  isFixed(variable: number): boolean {
    return cell(this.value, variable * 2) + cell(this.value, variable * 2 + 1) === 0;
  }

  /** Raises a bound; false where it then contradicts its opposite, and must be taken back. */
  push(bound: number, value: number, reason: number): boolean {
    if (this.size === this.#bound.length) this.#grow();
    const old = cell(this.value, bound);
    this.#bound[this.size] = bound;
    this.#old[this.size] = old;
    this.#before[this.size] = cell(this.#last, bound);
    this.#reason[this.size] = reason;
    this.#last[bound] = this.size++;
    this.value[bound] = value;
    if (value + cell(this.value, opposite(bound)) > 0) return false;
    this.#watcher.moved(bound, old, value);
    return true;
  }

  pop(): void {
    const place = --this.size;
    const bound = cell(this.#bound, place);
    const value = cell(this.value, bound);
    const isConsistent = value + cell(this.value, opposite(bound)) <= 0;
    this.value[bound] = cell(this.#old, place);
    this.#last[bound] = cell(this.#before, place);
    if (isConsistent) this.#watcher.takenBack(bound, cell(this.#old, place), value);
  }

  decide(bound: number, value: number): void {
    this.#levels.push(this.size);
    this.push(bound, value, NO_REASON);
  }

  backTo(level: number): void {
    const start = this.#levels[level] ?? this.size;
    while (this.size > start) this.pop();
    this.#levels.length = Math.min(level, this.#levels.length);
  }

  boundAt(place: number): number {
    return cell(this.#bound, place);
  }

  oldAt(place: number): number {
    return cell(this.#old, place);
  }

  reasonAt(place: number): number {
    return cell(this.#reason, place);
  }

  /** The change by which a statement that holds came to hold; -1 if it did from the outset. */
  placeOf(bound: number, value: number): number {
    let place = cell(this.#last, bound);
    while (place >= 0 && cell(this.#old, place) >= value) place = cell(this.#before, place);
    return place;
  }

  /** The level at which a change was made. */
  levelOf(place: number): number {
    let low = 0;
    let high = this.#levels.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#levels[middle] ?? 0) <= place) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #grow(): void {
    const twice = (old: Int32Array) => {
      const grown = new Int32Array(old.length * 2);
      grown.set(old);
      return grown;
    };
    this.#bound = twice(this.#bound);
    this.#old = twice(this.#old);
    this.#before = twice(this.#before);
    this.#reason = twice(this.#reason);
  }
}
