import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { LaidRow } from '../../shared/view/index.ts';

type Host = ReactiveControllerHost & HTMLElement;

/** A lane is as high as its letters need; of a finger it takes half, a bar is long. */
const LANE_LETTERS = 1.85;
const LANE_LEAST_PX = 30;
/** On a phone what somebody does stands under the name. */
const NARROW_LETTERS = 2.6;
const NARROW_BELOW_PX = 600;
/** An hour is so wide that most tasks can have a name; less than that many of them tell no day. */
const HOUR_LETTERS = 17;
const LEAST_HOURS = 1.5;

/** How wide a chart is, and which of its lanes are scrolled into sight. */
export class SeenChart implements ReactiveController {
  readonly #host: Host;
  readonly #scroller: () => HTMLElement | null;
  readonly #observer = new ResizeObserver(() => this.#host.requestUpdate());

  constructor(host: Host, scroller: () => HTMLElement | null) {
    this.#host = host;
    this.#scroller = scroller;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer.observe(this.#host);
  }

  /** What stands at the foot may take room from the rows, and give it back. */
  hostUpdated(): void {
    const scroller = this.#scroller();
    if (scroller) this.#observer.observe(scroller);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
  }

  get widthPx(): number {
    return this.#scroller()?.clientWidth || this.#host.clientWidth || 1;
  }

  get isNarrow(): boolean {
    return this.widthPx < NARROW_BELOW_PX;
  }

  get letterPx(): number {
    return Number.parseFloat(getComputedStyle(this.#host).fontSize) || LANE_LEAST_PX / 2;
  }

  get lanePx(): number {
    const letters = this.isNarrow ? NARROW_LETTERS : LANE_LETTERS;
    return Math.max(LANE_LEAST_PX, Math.round(letters * this.letterPx));
  }

  /** So long a stretch so much of it opens with: as much as it can show in words. */
  opensMs(timePx: number): number {
    return Math.max(LEAST_HOURS, timePx / (HOUR_LETTERS * this.letterPx)) * 3_600_000;
  }

  get lanesInView(): readonly [number, number] {
    const scroller = this.#scroller();
    const { scrollTop, clientHeight } = scroller ?? { scrollTop: 0, clientHeight: innerHeight };
    return [scrollTop / this.lanePx, (scrollTop + clientHeight) / this.lanePx];
  }

  /** Puts that lane on top, or as near to it as there is something below. */
  scrollUp(lane: number): void {
    const scroller = this.#scroller();
    if (scroller) scroller.scrollTop = lane * this.lanePx;
  }

  scrollTo({ top, lanes }: Pick<LaidRow, 'top' | 'lanes'>): void {
    const scroller = this.#scroller();
    if (!scroller) return;
    const [first, last] = this.lanesInView;
    if (top < first) scroller.scrollTop = top * this.lanePx;
    else if (top + lanes > last) {
      scroller.scrollTop = (top + lanes) * this.lanePx - scroller.clientHeight;
    }
  }
}
