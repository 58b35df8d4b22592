import type { Sync } from '../sync/index.ts';

/** A day that is no longer this screen's to show is not to be seen when its page is next loaded. */
export function forgetLikeness(sync: Sync): void {
  sync.subscribe(() => {
    if (sync.state.blank) navigator.serviceWorker?.controller?.postMessage('forget');
  });
}
