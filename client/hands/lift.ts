import type { Touch } from './wet-glass.ts';

/** A finger that slid further did not tap (what browsers allow one, from memory). */
const SLOP_PX = 15;

type LiftedTap = { readonly place: HTMLElement; readonly touch: Touch };

/**
 * Tells when a finger has left the place that it came down on, however long it lay there. A browser
 * taps only after it has played a mouse, a frame later, and after a long touch not at all.
 */
export class Lift {
  #from: (Touch & { readonly place: HTMLElement | undefined }) | null = null;
  #tap: LiftedTap | null = null;

  /** `place`: where there is any to tap. */
  down(touch: Touch, place: HTMLElement | undefined): void {
    this.#from = { ...touch, place };
    this.#tap = null;
  }

  up(touch: Touch): void {
    const from = this.#from;
    this.#from = null;
    if (!from?.place || from.id !== touch.id) return;
    const wentPx = Math.hypot(touch.xPx - from.xPx, touch.yPx - from.yPx);
    if (wentPx <= SLOP_PX && isOn(from.place, touch)) this.#tap = { place: from.place, touch };
  }

  /** The tap that it made, once; null where that is for the browser to say. */
  take(): LiftedTap | null {
    const tap = this.#tap;
    this.#tap = null;
    return tap;
  }
}

/** A place that was moved, or taken away, meanwhile is not the one that was meant. */
function isOn(place: HTMLElement, { xPx, yPx }: Touch): boolean {
  const { left, right, top, bottom } = place.getBoundingClientRect();
  return left <= xPx && xPx <= right && top <= yPx && yPx <= bottom;
}
