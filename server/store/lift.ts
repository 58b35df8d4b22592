import { EVENT_VERSION, type Event } from '../../shared/day/index.ts';

export type Lifted =
  | { readonly ok: true; readonly event: Event }
  /** `newer`: written by a later version of this program. */
  | { readonly ok: false; readonly why: 'unreadable' | 'newer' };

/**
 * An event as it was stored, brought to today's shape. Stored bytes never change, so every version
 * ever released stays readable here; a new one adds one step from the version before.
 */
export function lift(stored: unknown): Lifted {
  if (!isVersioned(stored)) return { ok: false, why: 'unreadable' };
  if (stored.version > EVENT_VERSION) return { ok: false, why: 'newer' };
  // The hash chain vouches that this is what we wrote, so its shape is trusted.
  return { ok: true, event: stored as unknown as Event };
}

function isVersioned(value: unknown): value is { readonly version: number } {
  return (
    typeof value === 'object' &&
    value !== null &&
    'version' in value &&
    Number.isInteger(value.version)
  );
}
