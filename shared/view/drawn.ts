import type { Instant } from '../kernel/index.ts';
import { moveTimes } from './alone.ts';
import type { Drawn, PendingTap } from './overlay.ts';
import { overlay } from './overlay.ts';
import type { View } from './views.ts';

/**
 * What a screen draws: the hub's view, its own unanswered taps laid over it, and times moved by the
 * lags where the hub has not moved them itself.
 */
export function drawnView<V extends View>(
  view: V,
  pending: readonly PendingTap[],
  { now, isAlone }: { readonly now: Instant; readonly isAlone: boolean },
): Drawn<V> {
  const laid = overlay(view, pending);
  if (pending.length === 0 && !isAlone) return laid;
  return { ...laid, view: moveTimes(laid.view, now) };
}
