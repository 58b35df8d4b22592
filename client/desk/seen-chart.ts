import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { LaidRow } from '../../shared/view/index.ts';

type Host = ReactiveControllerHost & HTMLElement;

/** A lane is as high as its letters need; of a finger it takes half, a bar is long. */
const LANE_ARCMIN = 44;
const LANE_LEAST_PX = 30;
const HOURS_PER_1000_PX = 6;

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

  hostDisconnected(): void {
    this.#observer.disconnect();
  }

  get widthPx(): number {
    return this.#scroller()?.clientWidth || this.#host.clientWidth || 1;
  }

  get lanePx(): number {
    const style = getComputedStyle(this.#host);
    const arcminPx = Number.parseFloat(style.getPropertyValue('--arcmin')) || 1;
    return Math.max(LANE_LEAST_PX, Math.round(LANE_ARCMIN * arcminPx));
  }

  /** So long a stretch it opens with: as much as its width can show in words. */
  get opensMs(): number {
    return Math.max(3, (this.widthPx / 1000) * HOURS_PER_1000_PX) * 3_600_000;
  }

  get lanesInView(): readonly [number, number] {
    const scroller = this.#scroller();
    const { scrollTop, clientHeight } = scroller ?? { scrollTop: 0, clientHeight: innerHeight };
    return [scrollTop / this.lanePx, (scrollTop + clientHeight) / this.lanePx];
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
