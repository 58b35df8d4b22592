import type { Instant } from '../../shared/kernel/index.ts';
import type { Answer, ReadOnly } from '../../shared/protocol/index.ts';
import type { Clock } from '../clock.ts';
import type { Report } from '../report.ts';
import type { Ask } from './ask.ts';
import { type Book, Fenced } from './book.ts';
import { createMailbox } from './mailbox.ts';

/** Where asks are put, and whether they still can be. */
export type Desk<State> = {
  readonly readOnly: ReadOnly | null;
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
  let readOnly: ReadOnly | null = book.broken && { atSeq: book.seq, why: book.broken.why };
  if (readOnly) report({ level: 'fault', what: 'the log is damaged', ...readOnly });
  const mailbox = createMailbox(
    (asks: readonly Ask<State>[]) => book.write(asks, now()),
    (run) => clock.after(0, run),
  );
  return {
    get readOnly() {
      return readOnly;
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
