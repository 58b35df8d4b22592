import type { CommandId } from '../../shared/kernel/index.ts';
import type { Command } from '../../shared/view/index.ts';
import type { AnswerWitness } from './answer-witness.ts';
import type { Device } from './device.ts';
import type { Verdict } from './verdict.ts';

/** Knows every tap that reached a device's disk: from then on it may not be lost. */
export class TapWitness {
  readonly #answers: AnswerWitness;
  readonly #verdict: Verdict;
  readonly #kept = new Map<CommandId, Command>();
  readonly #read = new Set<CommandId>();

  constructor(answers: AnswerWitness, verdict: Verdict) {
    this.#answers = answers;
    this.#verdict = verdict;
  }

  kept(command: Command): void {
    this.#kept.set(command.id, command);
  }

  /** Somebody has read why it was refused. */
  read(command: CommandId): void {
    this.#read.add(command);
  }

  /** When all is said and done: each was answered, and each refusal is there to be read. */
  lookThrough(devices: readonly Device[]): void {
    const shown = new Set(
      devices.flatMap(({ sync }) => sync?.state.refused.map(({ command }) => command.id) ?? []),
    );
    for (const { id, kind } of this.#kept.values()) {
      const answer = this.#answers.answerTo(id);
      this.#verdict.holds('kept', answer !== null, () => `${kind} (${id}) was never answered`, id);
      const isTold = answer?.ok !== false || shown.has(id) || this.#read.has(id);
      this.#verdict.holds('kept', isTold, () => `${kind} (${id}) was refused and nobody told`, id);
    }
  }
}
