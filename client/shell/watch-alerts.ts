import type { AlertsShown } from '../../shared/protocol/index.ts';
import { type Say, sayAlert } from '../../shared/words/index.ts';
import { OverLine } from '../hands/index.ts';
import type { Sync } from '../sync/index.ts';
import { AlertWatch, alertsDoor } from './alert-watch.ts';
import { chime } from './chime.ts';
import type { Settings } from './settings.ts';

/** So long it stands over a wall who is called. */
const SAID_MS = 20_000;

/**
 * Has a page know who is wanted, and sound if it is the one that does. `saysOver`: how a call is
 * said over a page that has no line of its own for it; null for one that has.
 */
export function watchAlerts(
  { sync, settings }: { readonly sync: Sync; readonly settings: Settings },
  changed: () => void,
  saysOver: (() => Say) | null,
): AlertWatch {
  const line = new OverLine();
  if (saysOver) document.body.append(line);
  const call = ({ notices }: AlertsShown) => {
    void chime();
    const said = saysOver ? notices.map((notice) => sayAlert(notice, saysOver())) : [];
    if (said.length > 0) line.showFor(said.join(' '), SAID_MS);
  };
  const watch = new AlertWatch({
    ask: alertsDoor(settings.token),
    asked: { screen: settings.screenId, sounds: settings.sounds },
    now: () => sync.hubNow(),
    changed,
    call,
  });
  watch.start();
  return watch;
}
