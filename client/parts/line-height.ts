import { ArcMeasured } from './arc-measured.ts';

/** `low`: its small rows are written small. `high`: there is room to write them larger. */
export type LineHeight = 'low' | 'high' | '';

/** Minutes of arc at the reader's eye. */
const LOW_BELOW = 150;
const HIGH_FROM = 240;
const TIGHT_BELOW = 760;
const WIDE_FROM = 900;
const TALL_FROM = 92;

/** Measures a line on the wall as its reader sees it, whenever its size changes. */
export class MeasuredLine extends ArcMeasured {
  #height: LineHeight = '';
  #wide = Number.POSITIVE_INFINITY;
  #isTall = false;

  get height(): LineHeight {
    return this.#height;
  }

  /** Minutes of arc. */
  get wide(): number {
    return this.#wide;
  }

  /** A title has a second row over what is to be minded. */
  get isTall(): boolean {
    return this.#isTall;
  }

  protected measured(wide: number, high: number): void {
    const isLow = high < LOW_BELOW || wide < TIGHT_BELOW;
    const isHigh = high >= HIGH_FROM && wide >= WIDE_FROM;
    const height = isLow ? 'low' : isHigh ? 'high' : '';
    const isTall = high >= TALL_FROM;
    const isSame = height === this.#height && isTall === this.#isTall;
    if (isSame && Math.abs(wide - this.#wide) < 1) return;
    this.#isTall = isTall;
    this.#height = height;
    this.#wide = wide;
    this.host.requestUpdate();
  }
}
