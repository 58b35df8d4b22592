import type { Instant } from '../../shared/kernel/index.ts';
import type { Answer, ReadOnly } from '../../shared/protocol/index.ts';
import type { Clock } from '../clock.ts';
import type { Report } from '../report.ts';
import type { Broken } from '../store/index.ts';
import type { Ask } from './ask.ts';
import { type Book, Fenced } from './book.ts';
import { createMailbox } from './mailbox.ts';

/** Where asks are put, and whether they still can be. */
export type Desk<State> = {
  readonly readOnly: ReadOnly | null;
  /** What was found of the log after it was opened: from now on nothing more is kept. */
  damaged(broken: Broken): void;
  put(ask: Ask<State>): Promise<Answer>;
  idle(): Promise<void>;
};

export function createDesk<State>({
  book,
  clock,
  now,
  onReadOnly,
  report,
}: {
  readonly book: Book<State>;
  readonly clock: Clock;
  readonly now: () => Instant;
  /** Told when nothing more is kept. */
  readonly onReadOnly: (readOnly: ReadOnly) => void;
  readonly report: Report;
}): Desk<State> {
  let readOnly: ReadOnly | null = null;
  function damaged({ seq, why }: Broken) {
    if (readOnly) return;
    readOnly = { atSeq: seq - 1, why };
    report({ level: 'fault', what: 'the log is damaged', ...readOnly });
  }
  if (book.broken) damaged(book.broken);
  const mailbox = createMailbox(
    (asks: readonly Ask<State>[]) => book.write(asks, now()),
    (run) => clock.after(0, run),
  );
  return {
    get readOnly() {
      return readOnly;
    },
    damaged(broken) {
      damaged(broken);
      if (readOnly) onReadOnly(readOnly);
    },
    async put(ask) {
      if (readOnly) return { ok: false, refusal: { rule: 'read-only', atSeq: readOnly.atSeq } };
      try {
        return await mailbox.post(ask);
      } catch (fault) {
        if (fault instanceof Fenced && !readOnly) {
          readOnly = { atSeq: book.seq, why: 'taken' };
          report({ level: 'fault', what: 'another hub has taken this log', ...readOnly });
          onReadOnly(readOnly);
        }
        throw fault;
      }
    },
    idle: mailbox.idle,
  };
}
