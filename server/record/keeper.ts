import { carryOf, type DayState, dayFrom, type Event } from '../../shared/day/index.ts';
import { canonical, must } from '../../shared/kernel/index.ts';
import { evidenceOf, recordOf } from '../../shared/record/index.ts';
import type { Kept, Start } from '../hub/index.ts';
import type { Report } from '../report.ts';
import type { EventLog } from '../store/index.ts';
import type { RecordStore } from './record-store.ts';
import { type Seal, sealed } from './seal.ts';
import { digestOf, type Signer } from './signing.ts';

/** Seals a day when it is closed, and once more when another begins. */
export type Keeper = {
  /** Told of every event, in order, with the day after it. */
  see(kept: Kept<DayState>): void;
  /** Resolves when all that was seen so far is sealed. */
  rest(): Promise<void>;
};

export type KeeperParts = {
  readonly log: EventLog;
  readonly store: RecordStore;
  readonly signer: Signer;
  /** The machine's clock, in UTC milliseconds. */
  readonly nowMs: () => number;
  readonly report: Report;
  /** Where the log was opened from. */
  readonly start: Start<DayState> | null;
};

/** What the last day that is over left, if its seal is this key's own: so the log need not be read. */
export function startFrom(store: RecordStore, { publicKey }: Signer): Start<DayState> | null {
  const found = store.start();
  if (!found || found.seal.key !== publicKey) return null;
  const { seal, carry } = found;
  if (carry.seq !== seal.lastSeq) return null;
  const mark = { seq: seal.lastSeq, hash: seal.hash };
  return { mark, state: dayFrom(carry), keptAt: carry.keptAt };
}

/** A keeper that goes on after the seals that are there. */
export function createKeeper(parts: KeeperParts): Keeper {
  const { report } = parts;
  let before: DayState | null = parts.start?.state ?? null;
  let work = Promise.resolve();

  function seal(why: Seal['why'], state: DayState) {
    work = work.then(async () => {
      try {
        await sealDay(parts, why, state);
      } catch (fault) {
        report({ level: 'fault', what: 'a day could not be sealed', day: state.day, fault });
      }
    });
  }

  return {
    see({ event, state }) {
      if (before?.plan && isTurn(event, before)) seal('turned', before);
      if (event.kind === 'dayClosed') seal('closed', state);
      before = state;
    },
    rest: () => work,
  };
}

/** Whether a day begins with it, and the one before is over. */
const isTurn = (event: Event, before: DayState) =>
  event.kind === 'planAdopted' && event.day !== before.day;

async function sealDay(parts: KeeperParts, why: Seal['why'], state: DayState): Promise<void> {
  const { log, store, signer, nowMs } = parts;
  // Never in the turn in which a tap is answered.
  await new Promise((resolve) => setImmediate(resolve));
  const seals = store.seals();
  const last = seals.at(-1) ?? null;
  // Seen again at an opening that had to read from the first entry.
  if (seals.some((each) => isSame(each, why, state)) || (last?.lastSeq ?? 0) > state.seq) return;
  const record = must(recordOf(state), 'a record of a planned day');
  const evidence = must(evidenceOf(state), 'what was done on a planned day');
  const carry = carryOf(state);
  const turned = seals.findLast((each) => each.why === 'turned');
  const body = {
    ...{ day: record.day as string, why },
    firstSeq: (turned?.lastSeq ?? 0) + 1,
    lastSeq: state.seq,
    hash: await hashOf(log, state.seq),
    sealedAt: new Date(nowMs()).toISOString(),
    closedBy: record.closed?.by ?? null,
    record: digestOf(canonical(record)),
    evidence: digestOf(canonical(evidence)),
    carry: digestOf(canonical(carry)),
  };
  store.add(sealed(body, last, signer), { record, evidence, carry });
}

const isSame = (seal: Seal, why: Seal['why'], { seq }: DayState) =>
  seal.lastSeq === seq && seal.why === why;

async function hashOf(log: EventLog, seq: number): Promise<string> {
  for await (const entry of log.read(seq)) if (entry.seq === seq) return entry.hash;
  throw new Error(`entry ${seq} is not in the log`);
}
