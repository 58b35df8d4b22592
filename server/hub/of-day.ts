import type { OfDay } from '../../shared/protocol/index.ts';
import type { EventLog } from '../store/index.ts';
import type { DayRules } from './rules.ts';

/** So much of a hash tells any two logs apart. */
const NAME_LETTERS = 16;

/** What a log goes by. */
export type LogName = {
  readonly name: string;
  /** Something was kept: it may have been the first. */
  learn(): Promise<void>;
};

/** Nothing, while it is empty or where its first entry cannot be read. */
export async function nameOf(log: EventLog): Promise<LogName> {
  let name = '';
  async function learn() {
    if (name !== '') return;
    try {
      for await (const { hash } of log.read(1)) {
        name = hash.slice(0, NAME_LETTERS);
        return;
      }
    } catch {
      // Damaged there, it is served up to nowhere, and nothing is kept in it.
    }
  }
  await learn();
  return {
    get name() {
      return name;
    },
    learn,
  };
}

/** Which day a screen is shown, and whether one that it was shown is that. */
export function ofDays<State>(
  book: { readonly state: State; readonly logName: string },
  { today }: Pick<DayRules<State>, 'today'>,
) {
  return {
    of: (): OfDay => ({ log: book.logName, day: today(book.state) }),
    isOurs: ({ log, day }: OfDay, state: State) => log === book.logName && day === today(state),
  };
}
