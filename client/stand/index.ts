import type { Settings } from '../shell/settings.ts';
import type { Sync } from '../sync/index.ts';
import { BetweenTaps } from './between-taps.ts';
import { drift } from './drift.ts';
import { fillGlass } from './fill-glass.ts';
import { keepAwake } from './keep-awake.ts';
import { keepLikeness } from './keep-likeness.ts';
import { keepShell } from './keep-shell.ts';
import { nightByClock } from './night-by-clock.ts';

export { renew } from './renew.ts';

/** Resolves when nobody is at the screen and nothing would be lost by loading it anew. */
export const betweenTaps = (sync: Sync): Promise<void> => new BetweenTaps(sync).wait();

export type Standing = { readonly isDesk: boolean } & Pick<Settings, 'ground' | 'fill'>;

/** Fits a screen to stand for weeks, once; nothing of it is needed for the first look. */
export function stand(sync: Sync, { isDesk, ground, fill }: Standing) {
  const between = new BetweenTaps(sync);
  // Asks that what this device keeps is not thrown out when its disk runs full.
  void navigator.storage?.persist?.();
  if ('serviceWorker' in navigator) {
    const workers = navigator.serviceWorker;
    keepShell(sync, { workers, between, reload: () => location.reload() }).catch(() => {
      // While screens are being built, or in a window that keeps nothing, there is no such worker.
    });
    keepLikeness(sync, workers);
  }
  const zone = () => sync.state.view?.zone ?? null;
  if (ground === 'clock') nightByClock({ nowMs: () => sync.hubNow(), zone });
  if (isDesk) return;
  keepAwake();
  drift(between);
  if (fill) fillGlass();
}
