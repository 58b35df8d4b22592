import { nanoid } from 'nanoid';
import type { OpenLink } from '../../shared/protocol/index.ts';
import { type Face, stationsOf } from '../../shared/view/index.ts';
import type { Sync } from '../sync/index.ts';
import { createSync, indexedOutbox, indexedView, socketLink, tabDrainer } from '../sync/index.ts';
import { forgetLikeness } from './forget-likeness.ts';
import type { Settings } from './settings.ts';
import { speakAsOwner } from './speak.ts';
import { standSoon } from './stand-soon.ts';
import { leaveWhenTurnedAway } from './turned-away.ts';
import { onWake } from './wake.ts';

/** The sync of one face on this device, on the browser's own clock, store and network. */
export function openSync(
  face: Face,
  settings: Settings,
  /** What a page hears of its link besides. */
  over = (open: OpenLink) => open,
): Sync {
  const { screenId, token, personId, ground, fill } = settings;
  // A face has an outbox of its own: the hub takes a tap only over a link of the face it was
  // made on.
  const name = `coalface ${face.kind === 'station' ? stationNamed(face) : face.kind}`;
  const sync = createSync({
    openLink: over(socketLink({ onWake })),
    outbox: indexedOutbox(name),
    lastView: indexedView(`${name}, last view`),
    drainer: tabDrainer(name),
    clock: { monotonicMs: () => performance.now(), wallMs: () => Date.now() },
    timers: {
      after(delayMs, run) {
        const timer = setTimeout(run, delayMs);
        return () => clearTimeout(timer);
      },
    },
    newId: () => nanoid(),
    screenId,
    ...(token && { token }),
    face,
    onWake,
    ...(personId && { personId }),
  });
  forgetLikeness(sync);
  leaveWhenTurnedAway(sync);
  speakAsOwner(sync, settings);
  standSoon(sync, { isDesk: face.kind === 'desk', ground, fill });
  return sync;
}

const stationNamed = (face: Extract<Face, { kind: 'station' }>) =>
  [`station ${stationsOf(face).join(',')}`, ...(face.hand ? [`of ${face.hand}`] : [])].join(' ');
