/** A finger that goes this far means to drag, not to tap. */
const DRAG_PX = 24;

/**
 * Follows a finger that took hold of something, and tells where it let go, if it went far enough to
 * mean it. A tap is left to the button under it.
 */
export function followDrag(
  grasp: PointerEvent,
  { dragged, dropped }: { dragged: () => void; dropped: (on: Element | null) => void },
): void {
  const stop = new AbortController();
  const { signal } = stop;
  let isDragged = false;
  const isFar = ({ clientX, clientY }: PointerEvent) =>
    Math.hypot(clientX - grasp.clientX, clientY - grasp.clientY) > DRAG_PX;
  const isSame = ({ pointerId }: PointerEvent) => pointerId === grasp.pointerId;
  addEventListener(
    'pointermove',
    (event) => {
      if (isDragged || !isSame(event) || !isFar(event)) return;
      isDragged = true;
      dragged();
    },
    { signal },
  );
  addEventListener(
    'pointerup',
    (event) => {
      if (!isSame(event)) return;
      stop.abort();
      if (isDragged) dropped(deepestAt(event.clientX, event.clientY));
    },
    { signal },
  );
  addEventListener('pointercancel', () => stop.abort(), { signal });
}

/** What lies there, through every shadow root. */
function deepestAt(x: number, y: number): Element | null {
  let found = document.elementFromPoint(x, y);
  for (let inner = found; inner; ) {
    found = inner;
    const next: Element | null = inner.shadowRoot?.elementFromPoint(x, y) ?? null;
    inner = next === inner ? null : next;
  }
  return found;
}
