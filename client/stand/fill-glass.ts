/**
 * Fills the glass at the first tap, since a browser lets a page do so on a tap alone. Whoever
 * leaves it by hand is left alone until the page is loaded anew.
 */
export function fillGlass(root: HTMLElement = document.documentElement): void {
  if (!document.fullscreenEnabled) return;
  const stop = new AbortController();
  const { signal } = stop;
  const fill = async () => {
    if (document.fullscreenElement) return;
    try {
      await root.requestFullscreen({ navigationUI: 'hide' });
    } catch {
      // The tap was of a kind that does not count; the next one may.
    }
  };
  addEventListener('click', () => void fill(), { signal });
  const left = () => {
    if (!document.fullscreenElement) stop.abort();
  };
  document.addEventListener('fullscreenchange', left, { signal });
}
