import type { Live } from '../day/index.ts';
import type { Instant } from '../kernel/index.ts';
import { type Logged, logged } from './logged.ts';
import { nameOf } from './logged-who.ts';

/** One thing that happened, with the names of its subjects; `shared/words` makes the sentence. */
export type LogLine = {
  readonly seq: number;
  /** When the finger came down. */
  readonly at: Instant;
  /** When the hub kept it: later where the screen was alone. */
  readonly keptAt: Instant;
  readonly person: string | null;
  /** As the screen is called at the desk; null for the hub itself, and one that has no name. */
  readonly screen: string | null;
  readonly said: Logged;
};

/** What a desk shows of it; the rest is in the log itself. */
const MOST_LINES = 150;

/** What has happened today, newest first. */
export function dayLog(live: Live): LogLine[] {
  return live.state.story
    .slice(-MOST_LINES)
    .reverse()
    .map((told) => ({
      seq: told.seq,
      at: told.at,
      keptAt: told.keptAt,
      person: told.personId && nameOf(live, told.personId),
      screen: (told.screenId && live.state.who.screens.get(told.screenId)?.name) ?? null,
      said: logged(live, told),
    }));
}
