import type { Refusal } from '../../shared/view/index.ts';
import type { Sync } from '../sync/index.ts';

/** The page where a screen asks to be let in, and finds where it belongs. */
const PAIR = '/pair.html';

/** Sends a screen that the hub turns away to where it can be let in, once nothing is lost by it. */
export function leaveWhenTurnedAway(
  sync: Sync,
  go: (path: string) => void = (path) => location.replace(path),
): void {
  const stop = sync.subscribe(() => {
    const { blank, refused, pending } = sync.state;
    if (!blank || !isAway(blank)) return;
    // What it kept waits on the disk for a screen that may be let in yet; what was refused has to
    // be read first.
    const isRead = pending.length === 0 && refused.length === 0;
    if (blank.rule !== 'screen-unknown' && !isRead) return;
    stop();
    go(PAIR);
  });
}

const isAway = ({ rule }: Refusal) =>
  rule === 'screen-unknown' || rule === 'screen-revoked' || rule === 'screen-elsewhere';
