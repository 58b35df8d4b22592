import type { Refusal } from '../../shared/view/index.ts';
import type { Sync } from '../sync/index.ts';

/** The page where a screen asks to be let in, and finds where it belongs. */
const PAIR = '/pair.html';

/** So long after a tap it may be taken back where it was made. */
const QUIET_MS = 8000;

type Ways = {
  readonly go: (path: string) => void;
  readonly nowMs: () => number;
  readonly later: (run: () => void, ms: number) => void;
};

const browser: Ways = {
  go: (path) => location.replace(path),
  nowMs: () => performance.now(),
  later: (run, ms) => void setTimeout(run, ms),
};

/**
 * Sends a screen that the hub turns away to where it can be let in, once nothing is lost by it. One
 * that was put up elsewhere may be let in again meanwhile, for the taps that it still has: it goes
 * between two of them.
 */
export function leaveWhenTurnedAway(sync: Sync, ways: Partial<Ways> = {}): void {
  const { go, nowMs, later } = { ...browser, ...ways };
  let isElsewhere = false;
  let isGone = false;
  let tappedMs = Number.NEGATIVE_INFINITY;

  function look() {
    const { blank, refused, pending } = sync.state;
    if (pending.length > 0) tappedMs = nowMs();
    isElsewhere ||= blank?.rule === 'screen-elsewhere';
    if (isGone || !(isElsewhere || isAway(blank))) return;
    // What it kept waits on the disk for a screen that may be let in yet; what was refused has to
    // be read first.
    const isRead = pending.length === 0 && refused.length === 0;
    if (blank?.rule !== 'screen-unknown' && !isRead) return;
    const quietMs = tappedMs + QUIET_MS - nowMs();
    if (isElsewhere && quietMs > 0) {
      later(look, quietMs);
      return;
    }
    isGone = true;
    stop();
    go(PAIR);
  }

  const stop = sync.subscribe(look);
}

const isAway = (blank: Refusal | null) =>
  blank?.rule === 'screen-unknown' || blank?.rule === 'screen-revoked';
