import { join } from 'node:path';
import type { DayState } from '../../shared/day/index.ts';
import type { Closing } from '../closing.ts';
import type { Hub, Kept, Start } from '../hub/index.ts';
import { lettersAddress } from '../letters.ts';
import type { Report } from '../report.ts';
import type { EventLog } from '../store/index.ts';
import { type ChainCheck, checkChain } from './check-chain.ts';
import { createKeeper, startFrom } from './keeper.ts';
import { createRecordDesk, type RecordDesk } from './record-desk.ts';
import { openRecordStore, type RecordStore } from './record-store.ts';
import { openSigner, type Signer } from './signing.ts';

export type OpenRecord = {
  readonly store: RecordStore;
  readonly signer: Signer;
  /** Where the hub may begin to read. */
  readonly start: Start<DayState> | null;
  readonly witness: (kept: Kept<DayState>) => void;
  /** Looks through what the hub did not read, while it works. */
  check(hub: Hub<DayState>): ChainCheck;
  desk(hub: Hub<DayState>, chain: ChainCheck): RecordDesk;
  /** Resolves when every day that is over is sealed. */
  rest(): Promise<void>;
};

/** The record of a kitchen's folder: its key and its seals lie beside the log. */
export function openRecord({
  folder,
  log,
  report,
  closing,
}: {
  readonly folder: string;
  readonly log: EventLog;
  readonly report: Report;
  readonly closing: Closing;
}): OpenRecord {
  const store = openRecordStore(join(folder, 'record.sqlite'));
  closing.add(store.close);
  const signer = openSigner(folder);
  const start = startFrom(store, signer);
  const parts = { log, store, signer, nowMs: Date.now, report, start };
  const keeper = createKeeper(parts);
  return {
    ...{ store, signer, start },
    witness: keeper.see,
    check(hub) {
      const seals = store.seals();
      const from = hub.openedFrom;
      const chain = checkChain({ log, from, seals, onBroken: hub.damaged, report });
      closing.add(chain.stop);
      return chain;
    },
    desk: (hub, chain) =>
      createRecordDesk({
        ...{ log, store, signer, chain, nowMs: Date.now, font: lettersAddress },
        state: () => hub.state,
      }),
    rest: keeper.rest,
  };
}
