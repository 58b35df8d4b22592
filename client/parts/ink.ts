/** A page that nobody looks at has no frames; it goes on after so long. */
const UNSEEN_MS = 100;

let coming: Promise<void> | null = null;

/**
 * A part has drawn by itself what a finger did. Until that is on the glass no whole screen is drawn
 * anew: the ink would come as late as all of that.
 */
export function inkFirst(): void {
  coming ??= painted().then(() => {
    coming = null;
  });
}

/** Resolves when what a part has just drawn is on the glass; null where nothing is awaited. */
export const inkToCome = (): Promise<void> | null => coming;

/**
 * What a finger did is told when its ink is on the glass, and at once where there is none to come:
 * the disk's answers would come before the frame. All that is told so keeps the order of the
 * fingers, and on a page that nobody looks at any longer it waits for no frame.
 */
export function afterInk(tell: () => void): void {
  if (coming) void coming.then(tell);
  else tell();
}

/** Makes a call of many within a frame: it is run in the next one, before that is painted. */
export function onceAFrame(run: () => void): () => void {
  let isDue = false;
  return () => {
    if (isDue) return;
    isDue = true;
    inFrame(() => {
      isDue = false;
      run();
    });
  };
}

/** Resolves after the next frame: what is put off in a frame is done when that is painted. */
const painted = () =>
  new Promise<void>((resolve) => {
    inFrame(() => setTimeout(resolve));
  });

function inFrame(run: () => void): void {
  const unseen = setTimeout(() => {
    cancelAnimationFrame(frame);
    run();
  }, UNSEEN_MS);
  const frame = requestAnimationFrame(() => {
    clearTimeout(unseen);
    run();
  });
}
