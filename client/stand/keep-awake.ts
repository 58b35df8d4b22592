/** What a browser offers against a glass that goes dark; some have none. */
type WakeLocks = Pick<WakeLock, 'request'>;

/**
 * Keeps the glass lit while it is looked at. A lock is let go when the page is hidden or the
 * battery is low, and cannot be used again: another is asked for whenever the page is back.
 */
export function keepAwake(locks: WakeLocks | undefined = navigator.wakeLock): void {
  if (!locks) return;
  let held: WakeLockSentinel | null = null;
  const take = async () => {
    if (document.visibilityState !== 'visible' || (held && !held.released)) return;
    try {
      held = await locks.request('screen');
    } catch {
      // On a low battery, or where the device's owner says no: the next look or touch asks again.
    }
  };
  document.addEventListener('visibilitychange', () => void take());
  addEventListener('pointerdown', () => void take(), { passive: true });
  void take();
}
