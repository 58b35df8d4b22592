import { isDeepStrictEqual } from 'node:util';
import type { Face, View } from '../../shared/view/index.ts';
import type { Device } from './device.ts';
import type { HubMachine } from './hub-machine.ts';

/** The view as it should stand on a wall now, by the log and the hub's clock. */
export type DrawNow = (face: Face) => View;

/** A wall is brought up to the clock every 5 s, and what it is sent is on its way for a moment. */
const BEHIND_MOST_MS = 6000;
/** Where the doubt alone moves, that is done by the minute. */
const DOUBT_BEHIND_MOST_MS = 66_000;
const isDoubt = (key: string) => /^(end)?(low|high)At$/i.test(key);

/** Why a screen does not agree with the hub yet; null where it does. */
export function disagreement(device: Device, machine: HubMachine, now: DrawNow): string | null {
  const { screenId, sync, outbox, face } = device;
  const { hub } = machine;
  if (!hub) return 'no hub is open';
  if (!sync) return `${screenId} has no page`;
  const { isUp, view, seq, pending, refused, readOnly, aloneSince } = sync.state;
  if (!isUp) return `${screenId} is not connected`;
  if (view === null || seq !== hub.health.seq) {
    return `${screenId} shows entry ${seq} of ${hub.health.seq}`;
  }
  if (pending.length > 0) return `${screenId} waits for ${pending[0]?.command.id}`;
  // A full store may have kept a tap and not its refusal; then the page at least shows it.
  const shown = new Set(refused.map(({ command }) => command.id));
  const unsent = outbox.find(({ command, refusal }) => refusal === null && !shown.has(command.id));
  if (unsent) return `${screenId} still keeps ${unsent.command.id}`;
  if (aloneSince !== null) return `${screenId} says it is alone`;
  if (readOnly !== null) return `${screenId} says it reads only`;
  return isNearly(ink(view), ink(now(face))) ? null : `${screenId} shows times gone by`;
}

/** All that is drawn of a view. */
const ink = ({ at: _, ...drawn }: View): unknown => drawn;

/** Whether two views tell the same, but for instants that are a moment apart, and seconds. */
function isNearly(a: unknown, b: unknown, mostMs = BEHIND_MOST_MS): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= mostMs;
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) {
    return isDeepStrictEqual(a, b);
  }
  const [left, right] = [Object.entries(a), new Map(Object.entries(b))];
  return (
    left.length === right.size &&
    left.every(([key, value]) => {
      const mostMs = isDoubt(key) ? DOUBT_BEHIND_MOST_MS : BEHIND_MOST_MS;
      return right.has(key) && isNearly(value, right.get(key), mostMs);
    })
  );
}
