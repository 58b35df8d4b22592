import type { Event } from '../../shared/day/index.ts';
import type { Instant } from '../../shared/kernel/index.ts';
import type { LogBreak } from '../../shared/protocol/index.ts';
import { EMPTY_HEAD, linkHash } from './chain.ts';
import { fromBytes } from './entry-bytes.ts';
import type { EventLog } from './event-log.ts';

/** How far a log holds: the last true entry, and what is wrong with the next if anything is. */
export type Walked = {
  readonly seq: number;
  /** When the last true entry was kept. */
  readonly keptAt: Instant | null;
  readonly broken: Broken | null;
};

export type Broken = { readonly seq: number; readonly why: LogBreak };

/**
 * Reads a log from its first entry, checks that each follows from the one before, and hands on what
 * is true.
 */
export async function walk(log: EventLog, each: (event: Event) => void): Promise<Walked> {
  let { seq, hash } = EMPTY_HEAD;
  let keptAt: Instant | null = null;
  const stop = (why: LogBreak): Walked => ({ seq, keptAt, broken: { seq: seq + 1, why } });
  const head = await readable(log.head());
  if (head === null) return stop('unreadable');
  for await (const entry of untilUnreadable(log.read(1))) {
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
