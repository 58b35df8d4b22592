import type { Outbox } from './outbox.ts';
import type { Timers } from './ports.ts';

/** A disk that has not answered by then counts as one that cannot: no tap waits for it longer. */
const PATIENCE_MS = 5_000;

/** An outbox that fails where a store neither keeps nor refuses, as one in a private window may. */
export function hurriedOutbox(outbox: Outbox, timers: Timers): Outbox {
  const inTime = <Kept>(work: Promise<Kept>): Promise<Kept> =>
    new Promise((resolve, reject) => {
      const stop = timers.after(PATIENCE_MS, () => reject(new Error('the store does not answer')));
      work.then(resolve, reject).finally(stop);
    });
  return {
    all: () => inTime(outbox.all()),
    put: (tap) => inTime(outbox.put(tap)),
    remove: (id) => inTime(outbox.remove(id)),
  };
}
