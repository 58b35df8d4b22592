import type { Celsius, Instant, PersonId } from '../kernel/index.ts';
import type { Breach } from '../plan/index.ts';
import { type CheckEntry, type CheckOn, type CorrectiveAction, checkKey } from './check-event.ts';
import { groupBy } from './plan-index.ts';
import type { DayState } from './state.ts';

/** That a limit was broken, by what was found. */
export type Failure = {
  readonly at: Instant;
  readonly by: PersonId | null;
  readonly tempC: Celsius | null;
  readonly breach: Breach;
};

/** How a check stands by what was said of it so far. */
export type Standing =
  /** `okAt`: when it was last kept; null where nobody has looked. */
  | { readonly kind: 'open'; readonly okAt: Instant | null }
  | { readonly kind: 'failed'; readonly failure: Failure }
  /** Something was done about it that has to show in a reading. */
  | { readonly kind: 'mending'; readonly action: CorrectiveAction; readonly since: Instant }
  /** What was done ends it. */
  | { readonly kind: 'ended'; readonly at: Instant };

const ends: ReadonlySet<CorrectiveAction> = new Set([
  'discard',
  'serve-now',
  'reject-delivery',
  'replace-thermometer',
  'ask-the-authority',
]);

/** What was said of each thing that was looked at, by its key, in its order. */
export function saidOf({ checks }: Pick<DayState, 'checks'>): Said {
  return groupBy(checks, ({ on }) => checkKey(on));
}

export type Said = ReadonlyMap<string, readonly CheckEntry[]>;

/**
 * Goes through what was said of a check since a moment. What was found broken stays so, whatever is
 * read after, until somebody says what was done about it.
 */
export function standingOfCheck(
  said: Said,
  on: CheckOn,
  { since, broken }: { since: Instant; broken: (entry: CheckEntry) => Breach | null },
): Standing {
  const entries = (said.get(checkKey(on)) ?? []).filter(({ at }) => at >= since);
  return entries.reduce<Standing>((standing, entry) => after(standing, entry, broken), {
    kind: 'open',
    okAt: null,
  });
}

function after(
  standing: Standing,
  entry: CheckEntry,
  broken: (entry: CheckEntry) => Breach | null,
): Standing {
  const { at, by } = entry;
  if (entry.kind === 'correctionRecorded') {
    const { action } = entry;
    if (ends.has(action)) return { kind: 'ended', at };
    if (action === 'wash-and-sanitise') return { kind: 'open', okAt: at };
    return { kind: 'mending', action, since: at };
  }
  if (standing.kind === 'failed') return standing;
  const breach = broken(entry);
  if (breach === null) return { kind: 'open', okAt: at };
  return { kind: 'failed', failure: { at, by, tempC: entry.tempC, breach } };
}
