import type { Report } from '../report.ts';
import { type Broken, type EventLog, type Mark, retrace } from '../store/index.ts';
import { faultOfSeal, type Seal } from './seal.ts';

/** How far the part of a log that was not read at its opening has been looked through. */
export type ChainCheck = {
  readonly state: 'whole' | 'under way' | 'broken';
  stop(): Promise<void>;
};

/** A pause after each piece, so that taps go first. */
const PAUSE_MS = 15;

/**
 * Looks through what was not read at the opening, from the first entry on, while the hub works:
 * that each entry follows from the one before, that the chain leads to where the hub began, and
 * that it passes through every seal.
 */
export function checkChain({
  log,
  from,
  seals,
  onBroken,
  report,
  pauseMs = PAUSE_MS,
}: {
  readonly log: EventLog;
  /** Where the hub began to read; null where it read all. */
  readonly from: Mark | null;
  readonly seals: readonly Seal[];
  readonly onBroken: (broken: Broken) => void;
  readonly report: Report;
  readonly pauseMs?: number;
}): ChainCheck {
  const upTo = furthest(from, seals);
  let state: ChainCheck['state'] = upTo === null ? 'whole' : 'under way';
  let isStopped = false;
  const pause = async () => {
    if (isStopped) throw new Stopped('the hub closes');
    await new Promise((resolve) => setTimeout(resolve, pauseMs));
  };
  async function run(to: Mark) {
    try {
      const broken = await retrace(log, to, { pause, see: sealsPass(seals) });
      state = broken ? 'broken' : 'whole';
      if (broken) onBroken(broken);
      else report({ level: 'note', what: 'the whole log holds', entries: to.seq });
    } catch (fault) {
      if (fault instanceof Stopped) return;
      report({ level: 'fault', what: 'the log could not be looked through', fault });
    }
  }
  const done = upTo === null ? Promise.resolve() : run(upTo);
  return {
    get state() {
      return state;
    },
    async stop() {
      isStopped = true;
      await done;
    },
  };
}

class Stopped extends Error {
  override readonly name = 'Stopped';
}

/**
 * An entry that a seal names must have the hash that it had then, and the seal must be as it was
 * made.
 */
export function sealsPass(seals: readonly Seal[]): (mark: Mark) => 'altered' | null {
  const named = new Map<number, { readonly seal: Seal; readonly before: Seal | null }[]>();
  seals.forEach((seal, i) => {
    const at = named.get(seal.lastSeq) ?? [];
    named.set(seal.lastSeq, [...at, { seal, before: seals[i - 1] ?? null }]);
  });
  return ({ seq, hash }) => {
    const holds = (named.get(seq) ?? []).every(
      ({ seal, before }) => seal.hash === hash && faultOfSeal(seal, before) === null,
    );
    return holds ? null : 'altered';
  };
}

/** How far there is anything to look through: to the last seal, or to where the hub began. */
export function furthest(from: Mark | null, seals: readonly Seal[]): Mark | null {
  const last = seals.reduce<Mark | null>(
    (most, { lastSeq: seq, hash }) => (most && most.seq > seq ? most : { seq, hash }),
    null,
  );
  return from && (!last || from.seq > last.seq) ? from : last;
}
