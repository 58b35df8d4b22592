import { ArcMeasured } from './arc-measured.ts';

/** In minutes of arc: a letter of small words, the edges of a box and its gap, and of the row. */
const LETTER = 13;
const ROUND_BOX = 36;
const ROUND_ROW = 44;

/** How many boxes stand beside each other in a row: a second would take a line of the wall. */
export class RowOfBoxes extends ArcMeasured {
  #wide = Number.POSITIVE_INFINITY;

  /**
   * As many of these, each with its lines of words, as fit between the words before them and those
   * of how many more there are; or one.
   */
  roomFor(boxes: readonly (readonly string[])[], around: readonly string[]): number {
    let used = ROUND_ROW + around.reduce((sum, words) => sum + wide(words), 0);
    const tooMuch = boxes.findIndex((lines) => {
      used += Math.max(...lines.map((line) => wide(line)));
      return used > this.#wide;
    });
    return tooMuch === -1 ? boxes.length : Math.max(1, tooMuch);
  }

  protected measured(wideNow: number): void {
    if (wideNow === 0 || wideNow === this.#wide) return;
    this.#wide = wideNow;
    // Not among what is laid out just now: the wall under the row gets another height by it.
    requestAnimationFrame(() => this.host.requestUpdate());
  }
}

const wide = (words: string) => LETTER * words.length + ROUND_BOX;
