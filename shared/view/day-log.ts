import type { Live, Told } from '../day/index.ts';
import type { Instant } from '../kernel/index.ts';
import { type Logged, logged } from './logged.ts';
import { nameOf } from './logged-who.ts';

/** One thing that happened, with the names of its subjects; `shared/words` makes the sentence. */
export type LogLine = {
  readonly seq: number;
  /** When the finger came down. */
  readonly at: Instant;
  /** When it came to the hub, where the screen was alone when it happened. */
  readonly sentAt: Instant | null;
  readonly person: string | null;
  /** As the screen is called at the desk; null for the hub itself, and one that has no name. */
  readonly screen: string | null;
  readonly said: Logged;
};

/** What a desk shows of it; the rest is in the log itself. */
const MOST_LINES = 150;

/** What takes longer to come was not under way: the screen was alone. */
const ALONE_MS = 60_000;

/** What has happened today, newest first. */
export function dayLog(live: Live): LogLine[] {
  // What happened before there was a day to tell it of was told afterwards, and by nobody alone.
  const begunAt = live.state.story[0]?.keptAt ?? live.now;
  const isLate = ({ at, keptAt }: Told) => at >= begunAt && keptAt - at > ALONE_MS;
  return live.state.story
    .slice(-MOST_LINES)
    .reverse()
    .map((told) => ({
      seq: told.seq,
      at: told.at,
      sentAt: isLate(told) ? told.keptAt : null,
      person: told.personId && nameOf(live, told.personId),
      screen: (told.screenId && live.state.who.screens.get(told.screenId)?.name) ?? null,
      said: logged(live, told),
    }));
}
