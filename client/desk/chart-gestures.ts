/** A finger that goes this far means to move the chart, not to tap. */
const DRAG_PX = 8;

export type GestureListener = {
  /** Moved by so much to the right. */
  pan(byPx: number): void;
  /** Fingers came so many times closer together, about a place, which moved by so much. */
  zoom(factor: number, aboutPx: number, byPx: number): void;
};

/**
 * Follows fingers over a chart: one moves it, two bring it nearer or further. Up and down is left
 * to the page, and a tap to whatever lies under it.
 */
export class ChartGestures {
  readonly #listener: GestureListener;
  readonly #fingers = new Map<number, number>();
  #downPx = 0;
  #isMoving = false;

  constructor(listener: GestureListener) {
    this.#listener = listener;
  }

  /** Whether the finger that has just been lifted moved the chart: then it tapped nothing. */
  get hasMoved(): boolean {
    return this.#isMoving;
  }

  down({ pointerId, clientX, button }: PointerEvent): void {
    if (button !== 0) return;
    if (this.#fingers.size === 0) {
      this.#isMoving = false;
      this.#downPx = clientX;
    }
    this.#fingers.set(pointerId, clientX);
  }

  move(event: PointerEvent): void {
    const { pointerId, clientX, currentTarget } = event;
    const wasPx = this.#fingers.get(pointerId);
    if (wasPx === undefined) return;
    const isFar = this.#fingers.size > 1 || Math.abs(clientX - this.#downPx) > DRAG_PX;
    if (!this.#isMoving && isFar) {
      this.#isMoving = true;
      if (currentTarget instanceof Element) currentTarget.setPointerCapture(pointerId);
    }
    if (!this.#isMoving) return;
    const other = [...this.#fingers].find(([id]) => id !== pointerId)?.[1];
    this.#fingers.set(pointerId, clientX);
    if (other === undefined) this.#listener.pan(clientX - wasPx);
    else this.#pinch(wasPx, clientX, other);
  }

  up({ pointerId }: PointerEvent): void {
    this.#fingers.delete(pointerId);
  }

  /** A wheel turned across moves; turned with Ctrl held, as a pad's pinch is told, it zooms. */
  wheel(event: WheelEvent, aboutPx: number): void {
    if (event.ctrlKey || event.metaKey) {
      event.preventDefault();
      this.#listener.zoom(Math.exp(event.deltaY / 300), aboutPx, 0);
    } else if (event.shiftKey || Math.abs(event.deltaX) > Math.abs(event.deltaY)) {
      event.preventDefault();
      this.#listener.pan(-(event.deltaX || event.deltaY));
    }
  }

  #pinch(wasPx: number, isPx: number, otherPx: number): void {
    const [wasApart, isApart] = [wasPx, isPx].map((px) => Math.max(20, Math.abs(px - otherPx)));
    const factor = (wasApart ?? 1) / (isApart ?? 1);
    this.#listener.zoom(factor, (isPx + otherPx) / 2, (isPx - wasPx) / 2);
  }
}
