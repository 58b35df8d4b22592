import type { Device } from './device.ts';
import type { HubMachine } from './hub-machine.ts';

/** Why a screen does not agree with the hub yet; null where it does. */
export function disagreement(device: Device, machine: HubMachine): string | null {
  const { screenId, sync, outbox } = device;
  const { hub } = machine;
  if (!hub) return 'no hub is open';
  if (!sync) return `${screenId} has no page`;
  const { isUp, seq, pending, refused, readOnly, aloneSince } = sync.state;
  if (!isUp) return `${screenId} is not connected`;
  if (seq !== hub.health.seq) return `${screenId} shows entry ${seq} of ${hub.health.seq}`;
  if (pending.length > 0) return `${screenId} waits for ${pending[0]?.command.id}`;
  // A full store may have kept a tap and not its refusal; then the page at least shows it.
  const shown = new Set(refused.map(({ command }) => command.id));
  const unsent = outbox.find(({ command, refusal }) => refusal === null && !shown.has(command.id));
  if (unsent) return `${screenId} still keeps ${unsent.command.id}`;
  if (aloneSince !== null) return `${screenId} says it is alone`;
  return readOnly === null ? null : `${screenId} says it reads only`;
}
