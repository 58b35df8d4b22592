import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { ChartWindow } from '../../shared/view/index.ts';
import { holdsWindow, widened } from '../../shared/view/index.ts';

/** At either side, as a share of what is in view. */
const ROOM = 0.5;
/** A finger that stands still for so long has come to where it was going. */
const REST_MS = 200;

/**
 * While a finger moves the chart, it is drawn wider than it is seen, and only shifted: to draw it
 * anew in each frame takes longer than a frame may. Once it rests it is drawn as it is seen.
 */
export class ChartShift implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #drawn: ChartWindow | null = null;
  #resting: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.rest();
  }

  get isMoving(): boolean {
    return this.#resting !== undefined;
  }

  move(): void {
    clearTimeout(this.#resting);
    this.#resting = setTimeout(() => {
      this.rest();
      this.#host.requestUpdate();
    }, REST_MS);
  }

  rest(): void {
    clearTimeout(this.#resting);
    this.#resting = undefined;
    this.#drawn = null;
  }

  /** What is drawn where `seen` is looked at. */
  drawnFor(seen: ChartWindow): ChartWindow {
    if (!this.isMoving) return seen;
    if (!this.#drawn || !holdsWindow(this.#drawn, seen)) this.#drawn = widened(seen, ROOM);
    return this.#drawn;
  }
}
