import type { Command, Decision, Fact } from '../../shared/day/index.ts';
import type { CommandId, Instant, PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { Asker, DayRules, RunningDay } from './rules.ts';

/**
 * Something to be decided and kept: a command of a screen, or a fact that the hub itself brings.
 */
export type Ask<State> = {
  readonly id: CommandId;
  readonly personId: PersonId | null;
  readonly screenId: ScreenId | null;
  /** When it happened, according to whoever asks. */
  readonly claimedAt: Instant;
  /** The earliest it can have happened. */
  earliestAt(state: State): Instant;
  decide(state: State, now: Instant): Decision;
};

/** A command that came over the link of a screen. */
export function askOf<State>(
  command: Command,
  {
    rules,
    asker,
    running,
  }: {
    readonly rules: DayRules<State>;
    /** Null where it came from no screen. */
    readonly asker: Asker | null;
    readonly running: () => RunningDay<State>;
  },
): Ask<State> {
  return {
    id: command.id,
    personId: command.personId,
    screenId: command.screenId,
    claimedAt: command.tappedAt,
    earliestAt: (state) => rules.changedAt(state, command),
    decide: (state, now) => {
      const refusal = asker && rules.mayAsk(state, asker, command);
      return refusal ? { ok: false, refusal } : rules.decide(state, command, now, running());
    },
  };
}

/**
 * What was tapped on one day and is decided on that alone: a task of another may have its name, and
 * what somebody read would get a time at which nobody did.
 */
export function onlyOn<State>(ask: Ask<State>, isThat: (state: State) => boolean): Ask<State> {
  return {
    ...ask,
    decide: (state, now) =>
      isThat(state)
        ? ask.decide(state, now)
        : { ok: false, refusal: { rule: 'another-day', taps: 1 } },
  };
}

/** Facts that are not for the day to decide, such as the plan it follows. */
export type Brought = {
  /** The same facts come under the same id, so that bringing them twice keeps them once. */
  readonly id: CommandId;
  readonly at: Instant;
  readonly facts: readonly Fact[];
};

export function askToKeep<State>({ id, at, facts }: Brought): Ask<State> {
  return {
    id,
    personId: null,
    screenId: null,
    claimedAt: at,
    earliestAt: () => at,
    decide: () => ({ ok: true, facts }),
  };
}
