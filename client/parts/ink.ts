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

/** Resolves after the next frame: what is put off in a frame is done when that is painted. */
const painted = () =>
  new Promise<void>((resolve) => {
    const unseen = setTimeout(resolve, UNSEEN_MS);
    requestAnimationFrame(() => {
      clearTimeout(unseen);
      setTimeout(resolve);
    });
  });
