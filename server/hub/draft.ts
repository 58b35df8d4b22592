import { EVENT_VERSION, type Event, type Refusal } from '../../shared/day/index.ts';
import { type CommandId, type Instant, instant } from '../../shared/kernel/index.ts';
import type { Answer } from '../../shared/protocol/index.ts';
import type { Report } from '../report.ts';
import { type Batch, toBytes } from '../store/index.ts';
import type { Ask } from './ask.ts';
import type { DayRules, Kept } from './rules.ts';

/** What a batch of asks would make of the day, nothing of which is true before it is appended. */
export type Draft<State> = {
  readonly state: State;
  readonly kept: readonly Kept<State>[];
  readonly entries: Batch['entries'];
  /** Those that were not answered before. */
  readonly answers: Batch['answers'];
  /** One for each ask, in their order. */
  readonly replies: readonly Answer[];
};

export type From<State> = {
  readonly rules: DayRules<State>;
  readonly state: State;
  readonly seq: number;
  readonly now: Instant;
  /** Answers that commands of this batch got before. */
  readonly known: ReadonlyMap<CommandId, Answer>;
  readonly report: Report;
};

/** Decides asks one after the other, each on the day that those before it would leave. */
export function draft<State>(from: From<State>, asks: readonly Ask<State>[]): Draft<State> {
  const known = new Map(from.known);
  const kept: Kept<State>[] = [];
  const answers: { commandId: CommandId; answer: Answer }[] = [];
  let { state } = from;
  const replies = asks.map((ask): Answer => {
    const before = known.get(ask.id);
    if (before) return before;
    const decided = decideOne({ ...from, state, seq: from.seq + kept.length }, ask);
    state = decided.kept.at(-1)?.state ?? state;
    kept.push(...decided.kept);
    answers.push({ commandId: ask.id, answer: decided.answer });
    known.set(ask.id, decided.answer);
    return decided.answer;
  });
  const entries = kept.map(({ event }) => ({
    commandId: event.commandId,
    bytes: toBytes(event),
  }));
  return { state, kept, entries, answers, replies };
}

type Decided<State> = {
  readonly kept: readonly Kept<State>[];
  readonly answer: Answer;
};

function decideOne<State>(from: From<State>, ask: Ask<State>): Decided<State> {
  const { rules, state, seq, report } = from;
  const refused = (refusal: Refusal) => ({ kept: [], answer: { ok: false, refusal } as const });
  try {
    const at = timeOf(from, ask);
    const decision = ask.decide(state, at);
    if (!decision.ok) return refused(decision.refusal);
    const { id: commandId, personId, screenId } = ask;
    let after = state;
    const kept = decision.facts.map((fact, index): Kept<State> => {
      // Of the new day is also what is kept beside its plan.
      const day = rules.dayOf(after, fact);
      const head = {
        seq: seq + 1 + index,
        version: EVENT_VERSION,
        day,
        at,
        keptAt: from.now,
      } as const;
      const event: Event = { ...fact, ...head, commandId, personId, screenId };
      after = rules.fold(after, event);
      return { event, state: after };
    });
    return { kept, answer: { ok: true, seq: seq + kept.length } };
  } catch (fault) {
    // A fault in a rule is ours, not the cook's: said loudly, and answered, so that one command
    // that we cannot decide does not hold up all that were tapped after it.
    report({ level: 'fault', what: 'a command could not be decided', commandId: ask.id, fault });
    return refused({ rule: 'hub-fault' });
  }
}

/**
 * When it happened: as claimed, for a screen that was alone tells the truth later, unless that lies
 * in the future or before the last change of the same thing.
 */
function timeOf<State>({ state, now }: From<State>, ask: Ask<State>): Instant {
  const earliest = Math.min(ask.earliestAt(state), now);
  return instant(ask.claimedAt <= now && ask.claimedAt >= earliest ? ask.claimedAt : now);
}
