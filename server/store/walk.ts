import type { Event } from '../../shared/day/index.ts';
import type { Instant } from '../../shared/kernel/index.ts';
import type { LogBreak } from '../../shared/protocol/index.ts';
import { EMPTY_HEAD, linkHash } from './chain.ts';
import { fromBytes } from './entry-bytes.ts';
import type { EventLog, Head } from './event-log.ts';

/** How far a log holds: the last true entry, and what is wrong with the next if anything is. */
export type Walked = {
  readonly seq: number;
  /** When the last true entry was kept. */
  readonly keptAt: Instant | null;
  readonly broken: Broken | null;
};

export type Broken = { readonly seq: number; readonly why: LogBreak };

/** A place in the chain: an entry and its hash; number 0 before the first. */
export type Mark = Pick<Head, 'seq' | 'hash'>;

/**
 * Reads a log from its first entry, or from after a mark that stands in it, checks that each
 * follows from the one before, and hands on what is true.
 */
export async function walk(
  log: EventLog,
  each: (event: Event) => void,
  from: Mark = EMPTY_HEAD,
): Promise<Walked> {
  let { seq, hash } = from;
  let keptAt: Instant | null = null;
  const stop = (why: LogBreak): Walked => ({ seq, keptAt, broken: { seq: seq + 1, why } });
  const head = await readable(log.head());
  if (head === null) return stop('unreadable');
  for await (const entry of untilUnreadable(log.read(seq + 1))) {
    if (entry === null) return stop('unreadable');
    if (entry.seq !== seq + 1) return stop('missing');
    if (linkHash(hash, entry.bytes) !== entry.hash) return stop('altered');
    const lifted = fromBytes(entry.bytes);
    if (!lifted.ok) return stop(lifted.why);
    // The number inside the bytes is hashed, the one beside them is not.
    if (lifted.event.seq !== entry.seq) return stop('altered');
    each(lifted.event);
    ({ seq, hash } = entry);
    ({ keptAt } = lifted.event);
  }
  return head.seq === seq && head.hash === hash
    ? { seq, keptAt, broken: null }
    : stop(head.seq > seq ? 'missing' : 'altered');
}

/** Whether that entry is in the log with that hash; whether it is true, the chain alone tells. */
export async function stands(log: EventLog, { seq, hash }: Mark): Promise<boolean> {
  for await (const entry of untilUnreadable(log.read(seq))) {
    return entry?.seq === seq && entry.hash === hash;
  }
  return false;
}

/**
 * Goes through the chain up to a mark that was trusted, in pieces, with `pause` between them, and
 * says where it breaks; null where it leads to the mark. `see` is told of each entry that holds,
 * and may find fault with it.
 */
export async function retrace(
  log: EventLog,
  to: Mark,
  {
    pause,
    see = () => null,
    piece = 256,
  }: {
    readonly pause: () => Promise<void>;
    readonly see?: (mark: Mark) => LogBreak | null;
    readonly piece?: number;
  },
): Promise<Broken | null> {
  let { seq, hash }: Mark = EMPTY_HEAD;
  const broken = (why: LogBreak): Broken => ({ seq: seq + 1, why });
  for await (const entry of untilUnreadable(log.read(1))) {
    if (entry === null) return broken('unreadable');
    if (entry.seq !== seq + 1) return broken('missing');
    if (linkHash(hash, entry.bytes) !== entry.hash) return broken('altered');
    const fault = see(entry);
    if (fault) return broken(fault);
    ({ seq, hash } = entry);
    if (seq === to.seq) return hash === to.hash ? null : { seq, why: 'altered' };
    if (seq % piece === 0) await pause();
  }
  return broken('missing');
}

async function readable<T>(value: Promise<T>): Promise<T | null> {
  try {
    return await value;
  } catch {
    return null;
  }
}

/** The items of a source, then one null if it gave up in the middle. */
async function* untilUnreadable<T>(source: AsyncIterable<T>): AsyncGenerator<T | null> {
  try {
    yield* source;
  } catch {
    yield null;
  }
}
