import { carryOf, type DayState, dayFrom, type Event } from '../../shared/day/index.ts';
import { canonical, must } from '../../shared/kernel/index.ts';
import { evidenceOf, recordOf } from '../../shared/record/index.ts';
import type { Kept, Start } from '../hub/index.ts';
import type { Report } from '../report.ts';
import type { EventLog } from '../store/index.ts';
import type { Drawn, RecordStore } from './record-store.ts';
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

/** What the last day that is over left, if its seal is this key's own: the log begins there. */
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
  const { report, store } = parts;
  let before: DayState | null = parts.start?.state ?? null;
  let seals: readonly Seal[] | null = null;
  let work = Promise.resolve();

  function seal(why: Seal['why'], state: DayState) {
    seals ??= store.seals();
    // Seen again at an opening that had to read from the first entry.
    const isKnown = seals.some((each) => each.lastSeq === state.seq && each.why === why);
    if (isKnown || (seals.at(-1)?.lastSeq ?? 0) > state.seq) return;
    // At once, so that no day has to be held on to till its turn comes.
    const drawn = drawnFrom(state);
    work = work.then(async () => {
      try {
        const made = await sealOf(parts, why, drawn, seals ?? []);
        store.add(made, drawn);
        seals = [...(seals ?? []), made];
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

const drawnFrom = (state: DayState): Drawn => ({
  record: must(recordOf(state), 'a record of a planned day'),
  evidence: must(evidenceOf(state), 'what was done on a planned day'),
  carry: carryOf(state),
});

async function sealOf(
  { log, signer, nowMs }: KeeperParts,
  why: Seal['why'],
  { record, evidence, carry }: Drawn,
  seals: readonly Seal[],
): Promise<Seal> {
  const turned = seals.findLast((each) => each.why === 'turned');
  const body = {
    ...{ day: record.day as string, why },
    firstSeq: (turned?.lastSeq ?? 0) + 1,
    lastSeq: carry.seq,
    hash: await hashOf(log, carry.seq),
    sealedAt: new Date(nowMs()).toISOString(),
    closedBy: record.closed?.by ?? null,
    record: digestOf(canonical(record)),
    evidence: digestOf(canonical(evidence)),
    carry: digestOf(canonical(carry)),
  };
  return sealed(body, seals.at(-1) ?? null, signer);
}

async function hashOf(log: EventLog, seq: number): Promise<string> {
  for await (const entry of log.read(seq)) if (entry.seq === seq) return entry.hash;
  throw new Error(`entry ${seq} is not in the log`);
}
