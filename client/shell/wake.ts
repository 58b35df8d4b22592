/** Calls back when the device woke, the page is looked at again or the network returned. */
export function onWake(woke: () => void): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  const ifSeen = () => {
    if (document.visibilityState === 'visible') woke();
  };
  document.addEventListener('visibilitychange', ifSeen, { signal });
  addEventListener('online', woke, { signal });
  // A browser that is short of something lets a page stand still, and then go on.
  document.addEventListener('resume', woke, { signal });
  // Not on the page's first show, when everything is under way already.
  addEventListener('pageshow', ({ persisted }) => persisted && woke(), { signal });
  return () => stop.abort();
}
