import type { OpenLink, Wanted } from '../../shared/protocol/index.ts';
import { type Say, sayAlert } from '../../shared/words/index.ts';
import { OverLine } from '../hands/index.ts';
import { AlertWatch, linkWithCalls } from './alert-watch.ts';
import { chime } from './chime.ts';
import type { Settings } from './settings.ts';

/** So long it stands over a wall who is called. */
const SAID_MS = 20_000;

type Told = {
  /** The hub's clock, in milliseconds. */
  readonly now: () => number;
  readonly changed?: () => void;
  /** How a call is said over a page that has no line of its own for it. */
  readonly saysOver?: () => Say;
};

/**
 * Has a page know who is wanted, and sound if it is the one that does. `over`: for its link, which
 * brings that.
 */
export function watchAlerts({ sounds }: Settings, { now, changed = () => {}, saysOver }: Told) {
  const line = new OverLine();
  if (saysOver) document.body.append(line);
  const call = ({ notices }: Wanted) => {
    void chime();
    const said = saysOver ? notices.map((notice) => sayAlert(notice, saysOver())) : [];
    if (said.length > 0) line.showFor(said.join(' '), SAID_MS);
  };
  const alerts = new AlertWatch({ now, changed, call });
  const over = (open: OpenLink) => linkWithCalls(open, sounds, (wanted) => alerts.take(wanted));
  return { alerts, over };
}
