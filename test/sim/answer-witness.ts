import { type CommandId, canonical } from '../../shared/kernel/index.ts';
import type { Answer, CommandMessage } from '../../shared/protocol/index.ts';
import type { Journal } from './journal.ts';
import type { LogWitness, Stretch } from './log-witness.ts';
import type { Verdict } from './verdict.ts';

type Given = {
  readonly answer: Answer;
  readonly spelled: string;
  readonly stretch: Stretch | null;
};

/** Hears every answer as it leaves the hub, and holds the hub to it. */
export class AnswerWitness {
  readonly #log: LogWitness;
  readonly #verdict: Verdict;
  readonly #journal: Journal;
  readonly #given = new Map<CommandId, Given>();

  constructor(log: LogWitness, verdict: Verdict, journal: Journal) {
    this.#log = log;
    this.#verdict = verdict;
    this.#journal = journal;
  }

  answerTo(command: CommandId): Answer | null {
    return this.#given.get(command)?.answer ?? null;
  }

  answered(command: CommandMessage, answer: Answer): void {
    const { id } = command;
    this.#log.look();
    const word = answer.ok ? `yes, ${answer.seq}` : `no, ${answer.refusal.rule}`;
    this.#journal.happened(answer.ok ? 'answered yes' : 'answered no', 'hub', `to ${id}: ${word}`);
    if (!answer.ok && answer.refusal.rule === 'barred') this.#journal.count('refused for a limit');
    const stretch = this.#log.stretchOf(id) ?? null;
    const spelled = canonical(answer);
    const before = this.#given.get(id);
    if (before) {
      this.#journal.count('answered again');
      this.#verdict.holds(
        'same',
        before.spelled === spelled,
        () => {
          return `${id} was answered ${before.spelled} and then ${spelled}`;
        },
        id,
      );
    } else {
      this.#given.set(id, { answer, spelled, stretch });
    }
    if (answer.ok) {
      this.#verdict.holds(
        'once',
        stretch?.last === answer.seq,
        () => {
          return `${id} was answered yes, ${answer.seq}, and lies at ${canonical(stretch)}`;
        },
        id,
      );
    } else {
      this.#verdict.holds(
        'once',
        stretch === null,
        () => `${id} was refused and is in the log`,
        id,
      );
    }
  }

  /** Whatever was answered must still be so, above all after a hub has died. */
  lookThrough(): void {
    for (const [id, { stretch }] of this.#given) {
      const now = this.#log.stretchOf(id) ?? null;
      const isThere = stretch?.first === now?.first && stretch?.last === now?.last;
      this.#verdict.holds(
        'once',
        isThere,
        () => {
          return `${id} was answered, lay at ${canonical(stretch)} and lies at ${canonical(now)}`;
        },
        id,
      );
    }
  }
}
