import type { ReactiveController, ReactiveControllerHost } from 'lit';

type Host = ReactiveControllerHost & HTMLElement;

/** In minutes of arc: a letter of small words, the edges of a box and its gap, and of the row. */
const LETTER = 13;
const ROUND_BOX = 36;
const ROUND_ROW = 44;
/** Letters of the box that says how many more there are. */
const MORE_LETTERS = 8;

/** How many boxes stand beside each other in a row: a second would take a line of the wall. */
export class RowOfBoxes implements ReactiveController {
  readonly #host: Host;
  readonly #observer = new ResizeObserver(() => this.#measure());
  #wide = Number.POSITIVE_INFINITY;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
  }

  /** As many of these, each with its lines of words, as fit after the words before them; or one. */
  roomFor(boxes: readonly (readonly string[])[], before: string): number {
    let used = ROUND_ROW + wide(before) + wide('.'.repeat(MORE_LETTERS));
    const tooMuch = boxes.findIndex((lines) => {
      used += Math.max(...lines.map((line) => wide(line)));
      return used > this.#wide;
    });
    return tooMuch === -1 ? boxes.length : Math.max(1, tooMuch);
  }

  #measure(): void {
    const { offsetWidth } = this.#host;
    const arcmin = Number.parseFloat(getComputedStyle(this.#host).getPropertyValue('--arcmin'));
    if (offsetWidth === 0 || offsetWidth / arcmin === this.#wide) return;
    this.#wide = offsetWidth / arcmin;
    // Not among what is laid out just now: the wall under the row gets another height by it.
    requestAnimationFrame(() => this.#host.requestUpdate());
  }
}

const wide = (words: string) => LETTER * words.length + ROUND_BOX;
