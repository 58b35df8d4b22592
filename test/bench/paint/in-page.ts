/** What the page under measurement writes down. */
type Written = { inkMs: number[]; frameMs: number[] };

declare global {
  interface Window {
    written: Written;
  }
}

/**
 * Goes into the page before its own scripts. From the finger's lift to the end of the first frame
 * in which the ring under it has its ink.
 */
export function watchInk(): void {
  window.written = { inkMs: [], frameMs: [] };
  const ringUnder = (event: Event) =>
    event
      .composedPath()
      .find((each): each is HTMLElement => each instanceof HTMLElement && each.matches('tap-ring'));
  addEventListener(
    'pointerup',
    (event) => {
      const ring = ringUnder(event);
      const look = () => {
        if (!ring?.hasAttribute('inked')) {
          if (performance.now() - event.timeStamp < 2_000) requestAnimationFrame(look);
          return;
        }
        // A message is read when the frame it was sent in is painted.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => window.written.inkMs.push(performance.now() - event.timeStamp);
        port2.postMessage(null);
      };
      if (ring) requestAnimationFrame(look);
    },
    { capture: true },
  );
}

/** Moves the chart by a few pixels in each frame, far off and back; resolves when it has. */
export function panChart(frames: number): Promise<void> {
  const deep = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((each) => [
      each,
      ...(each.shadowRoot ? deep(each.shadowRoot) : []),
    ]);
  const chart = deep(document).find((each) => each.matches('.sheet'));
  if (!chart) throw new Error('no chart');
  return new Promise((resolve) => {
    const step = (left: number) => {
      const from = performance.now();
      const deltaX = left > frames / 2 ? 9 : -9;
      chart.dispatchEvent(new WheelEvent('wheel', { deltaX, bubbles: true, cancelable: true }));
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        window.written.frameMs.push(performance.now() - from);
        if (left === 0) resolve();
        else requestAnimationFrame(() => step(left - 1));
      };
      port2.postMessage(null);
    };
    requestAnimationFrame(() => step(frames));
  });
}
