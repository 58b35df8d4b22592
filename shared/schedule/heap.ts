import { at } from './network.ts';

const ABSENT = -1;

/** A heap of small numbers, each in it once, the one with the least key on top. */
export class Heap {
  readonly #items: Int32Array;
  readonly #placeOf: Int32Array;
  readonly #keys: Int32Array;
  #size = 0;

  constructor(items: number) {
    this.#items = new Int32Array(items);
    this.#placeOf = new Int32Array(items).fill(ABSENT);
    this.#keys = new Int32Array(items);
  }

  get size(): number {
    return this.#size;
  }

  /** The least key; only while there is one. */
  get least(): number {
    return at(this.#keys, at(this.#items, 0));
  }

  /** Puts an item in, or moves it to where its new key belongs. */
  set(item: number, key: number): void {
    const place = at(this.#placeOf, item);
    if (place !== ABSENT && at(this.#keys, item) === key) return;
    this.#keys[item] = key;
    if (place === ABSENT) {
      this.#put(item, this.#size);
      this.#size++;
    }
    this.#rise(at(this.#placeOf, item));
    this.#sink(at(this.#placeOf, item));
  }

  /** Puts an item in, or moves it up if its new key is less than the one it has. */
  lower(item: number, key: number): void {
    if (at(this.#placeOf, item) === ABSENT || key < at(this.#keys, item)) this.set(item, key);
  }

  /** Takes the item with the least key out. */
  pop(): number {
    const top = at(this.#items, 0);
    this.delete(top);
    return top;
  }

  delete(item: number): void {
    const place = at(this.#placeOf, item);
    if (place === ABSENT) return;
    this.#placeOf[item] = ABSENT;
    this.#size--;
    if (place === this.#size) return;
    const moved = at(this.#items, this.#size);
    this.#put(moved, place);
    this.#rise(place);
    this.#sink(at(this.#placeOf, moved));
  }

  #put(item: number, place: number): void {
    this.#items[place] = item;
    this.#placeOf[item] = place;
  }

  #rise(from: number): void {
    const item = at(this.#items, from);
    const key = at(this.#keys, item);
    let place = from;
    while (place > 0) {
      const above = (place - 1) >> 1;
      const other = at(this.#items, above);
      if (at(this.#keys, other) <= key) break;
      this.#put(other, place);
      place = above;
    }
    this.#put(item, place);
  }

  #sink(from: number): void {
    const item = at(this.#items, from);
    const key = at(this.#keys, item);
    let place = from;
    for (let below = place * 2 + 1; below < this.#size; below = place * 2 + 1) {
      const right = below + 1;
      const isRight = right < this.#size && this.#keyAt(right) < this.#keyAt(below);
      const child = isRight ? right : below;
      const other = at(this.#items, child);
      if (at(this.#keys, other) >= key) break;
      this.#put(other, place);
      place = child;
    }
    this.#put(item, place);
  }

  #keyAt(place: number): number {
    return at(this.#keys, at(this.#items, place));
  }
}
