import type { Standing } from '../stand/index.ts';
import type { Sync } from '../sync/index.ts';

/** What a screen needs to stand for weeks waits until it has shown its day. */
const FIRST_LOOK_MS = 1500;
const TRY_AGAIN_MS = 60_000;
const RELOAD_REST_MS = 60_000;

/** Fits a screen to stand for weeks, once it has shown what it is there for. */
export function standSoon(sync: Sync, standing: Standing): void {
  const later = (ms: number) =>
    setTimeout(async () => {
      try {
        (await import('../stand/index.ts')).stand(sync, standing);
      } catch {
        // The hub went away before the rest of the page was fetched.
        later(TRY_AGAIN_MS);
      }
    }, ms);
  later(FIRST_LOOK_MS);
}

/**
 * Brings a screen to load itself anew when the hub speaks another version, between taps, and at
 * most once in a while.
 */
export function reloadWhenDue(sync: Sync): void {
  const key = 'coalface reloaded';
  let isGoing = false;
  sync.subscribe(async () => {
    if (!sync.state.isReloadDue || isGoing) return;
    const last = Number(sessionStorage.getItem(key) ?? 0);
    if (Date.now() - last < RELOAD_REST_MS) return;
    isGoing = true;
    try {
      const { betweenTaps, renew } = await import('../stand/index.ts');
      await betweenTaps(sync);
      sessionStorage.setItem(key, String(Date.now()));
      await renew();
    } catch {
      // The rest of the page is of a version that the hub no longer has.
      sessionStorage.setItem(key, String(Date.now()));
      location.reload();
    }
  });
}
