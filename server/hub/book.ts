import type { Event } from '../../shared/day/index.ts';
import { assert, type CommandId, type Instant } from '../../shared/kernel/index.ts';
import type { Answer } from '../../shared/protocol/index.ts';
import type { Report } from '../report.ts';
import {
  type Appended,
  type Broken,
  type EventLog,
  fromBytes,
  type Mark,
  stands,
  walk,
} from '../store/index.ts';
import type { Ask } from './ask.ts';
import { type Draft, draft } from './draft.ts';
import { nameOf } from './of-day.ts';
import type { DayRules, Kept } from './rules.ts';

/** The log, and the day folded from it so far. One writer at a time. */
export type Book<State> = {
  readonly state: State;
  readonly seq: number;
  readonly logName: string;
  /** Entries up to here were not read at its opening: what they come to was vouched for. */
  readonly openedFrom: Mark | null;
  /** When the last entry was kept that was true at its opening. */
  readonly openedAt: Instant | null;
  readonly broken: Broken | null;
  /**
   * Decides and keeps; resolves when it is durable. Rejects when it was not kept, or nobody knows.
   */
  write(asks: readonly Ask<State>[], now: Instant): Promise<readonly Answer[]>;
};

/** What a log comes to up to a mark, so that it need not be read from its first entry. */
export type Start<State> = {
  readonly mark: Mark;
  readonly state: State;
  readonly keptAt: Instant;
};

export type BookParts<State> = {
  /** Taken where its mark stands in the log; else all of it is read. */
  readonly start?: Start<State> | null;
  /** Told of every event that is read at the opening. */
  readonly onRead?: (kept: Kept<State>) => void;
  readonly log: EventLog;
  readonly rules: DayRules<State>;
  readonly epoch: string;
  readonly report: Report;
  /** Told of every event once it is durable, in order. */
  readonly onKept: (kept: readonly Kept<State>[]) => void;
};

/** Another hub has the log now; this one must not go on. */
export class Fenced extends Error {
  override readonly name = 'Fenced';
}

/**
 * Tries of one batch: the second, after reading on, settles every doubt that reading can settle.
 */
const TRIES = 2;

/** Reads the log from its start and takes it, unless it is broken: then it is left as it is. */
export async function openBook<State>(parts: BookParts<State>): Promise<Book<State>> {
  const { log, rules, epoch, report, onKept, onRead = () => {} } = parts;
  const asked = parts.start ?? null;
  const start = asked && (await stands(log, asked.mark)) ? asked : null;
  if (asked && !start) report({ level: 'warning', what: 'the log is read from its first entry' });
  let state = start?.state ?? rules.empty();
  const read = (event: Event) => {
    state = rules.fold(state, event);
    onRead({ event, state });
  };
  const walked = await walk(log, read, start?.mark);
  let { seq } = walked;
  const named = await nameOf(log);
  if (walked.broken === null) {
    const head = await log.claim(epoch);
    assert(head.seq === seq, `the log moved to ${head.seq} while it was read to ${seq}`);
  }

  /** Takes over what is in the log already, above all a batch whose append failed halfway. */
  async function readOn() {
    for await (const entry of log.read(seq + 1)) {
      const lifted = fromBytes(entry.bytes);
      assert(lifted.ok, `entry ${entry.seq} cannot be read`);
      state = rules.fold(state, lifted.event);
      ({ seq } = entry);
      onKept([{ event: lifted.event, state }]);
    }
  }

  async function append({ entries, answers }: Draft<State>): Promise<Appended | null> {
    try {
      return await log.append({ expectedSeq: seq, epoch, entries, answers });
    } catch (fault) {
      report({ level: 'fault', what: 'an append failed', seq, fault });
      return null;
    }
  }

  async function write(asks: readonly Ask<State>[], now: Instant): Promise<readonly Answer[]> {
    for (let attempt = 1; attempt <= TRIES; attempt++) {
      const known = await answersTo(log, asks);
      const drafted = draft({ rules, state, seq, now, known, report }, asks);
      if (drafted.answers.length === 0) return drafted.replies;
      const appended = await append(drafted);
      if (appended?.ok) {
        ({ state } = drafted);
        ({ seq } = appended.head);
        await named.learn();
        if (drafted.kept.length > 0) onKept(drafted.kept);
        return drafted.replies;
      }
      if (appended?.why === 'fenced') throw new Fenced(`epoch ${appended.epoch} has the log`);
      await readOn();
    }
    throw new Error('the log keeps nothing');
  }

  return {
    get state() {
      return state;
    },
    get seq() {
      return seq;
    },
    get logName() {
      return named.name;
    },
    openedFrom: start?.mark ?? null,
    openedAt: walked.keptAt ?? start?.keptAt ?? null,
    broken: walked.broken,
    write,
  };
}

async function answersTo<State>(
  log: EventLog,
  asks: readonly Ask<State>[],
): Promise<Map<CommandId, Answer>> {
  const known = new Map<CommandId, Answer>();
  for (const { id } of asks) {
    const answer = await log.answerTo(id);
    if (answer) known.set(id, answer);
  }
  return known;
}
