import type { Sync } from '../sync/index.ts';
import type { BetweenTaps } from './between-taps.ts';

const LOOK_EVERY_MS = 60 * 60_000;
/** A hub that comes back may be a newer one; all screens need not ask in the same second. */
const LOOK_AFTER_MS = 5000;

type Ports = {
  readonly workers: ServiceWorkerContainer;
  readonly between: BetweenTaps;
  readonly reload: () => void;
};

/**
 * Has the device keep the files of the screens, and goes over to newer ones between taps. Where the
 * browser keeps nothing, or the link is not safe, a screen needs its hub to start: it says so
 * nowhere, since it works as long as it is open.
 */
export async function keepShell(sync: Sync, { workers, between, reload }: Ports): Promise<void> {
  // The first worker takes over pages that were loaded without one: nothing is newer then.
  let hadOne = workers.controller !== null;
  let isGoing = false;
  workers.addEventListener('controllerchange', async () => {
    if (isGoing || !hadOne) {
      hadOne = true;
      return;
    }
    isGoing = true;
    await between.wait();
    reload();
  });
  const found = await workers.register('/sw.js', { updateViaCache: 'none' });
  const takeOver = async () => {
    if (!found.waiting || workers.controller === null) return;
    await between.wait();
    found.waiting?.postMessage('take over');
  };
  found.addEventListener('updatefound', () => {
    const { installing } = found;
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'installed') void takeOver();
    });
  });
  void takeOver();
  lookForNewer(sync, found);
}

function lookForNewer(sync: Sync, found: ServiceWorkerRegistration): void {
  // With the hub away there is nothing to be found, and the next time it will be.
  const look = () => void found.update().catch(() => {});
  setInterval(look, LOOK_EVERY_MS);
  let { isUp } = sync.state;
  sync.subscribe(() => {
    const wasUp = isUp;
    isUp = sync.state.isUp;
    if (isUp && !wasUp) setTimeout(look, LOOK_AFTER_MS);
  });
}
