import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Kilograms, PersonId } from '../../shared/kernel/index.ts';
import type { Person, TaskView } from '../../shared/view/index.ts';
import { scaleWeight, textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import { Part } from './part.ts';
import type { Weighed } from './scale-pad.ts';
import './scale-pad.ts';

/**
 * Curing salt is weighed by one person and read again by another: who, who else, and what the scale
 * shows, one after the other. Asks for the weighing to be kept, or tells `close`.
 */
@customElement('cure-pad')
export class CurePad extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap);
        font-size: var(--small);
      }
    `,
  ];

  @property({ attribute: false }) task: TaskView | null = null;
  @property({ attribute: false }) people: readonly Person[] = [];
  @state() private first: PersonId | null = null;
  @state() private second: PersonId | null = null;

  protected override draw() {
    const { task, first, second } = this;
    if (!task?.cure) return nothing;
    const words = this.words.cure;
    if (first === null) return this.#who(words.whoWeighs, (id) => this.#weighs(id));
    if (second === null) return this.#who(words.whoReads, (id) => this.#reads(id));
    return this.#amount(task, task.cure);
  }

  #who(question: string, choose: (id: PersonId) => void) {
    const names = this.people
      .filter(({ id, onShift, isOut }) => onShift && !isOut && id !== this.first)
      .map(({ id, name }) => ({ label: name, choose: () => choose(id) }));
    return html`<p>${question}</p>
      ${this.#choices(question, [...names, this.#close])}`;
  }

  #amount(task: TaskView, { weightKg, mix }: NonNullable<TaskView['cure']>) {
    const { say } = this;
    const asks = this.words.cure.asked(scaleWeight(weightKg, say), textIn(mix, say));
    // No cure weighs as much as what it is rubbed on; the hub holds it to its limit.
    const keep = { label: this.words.keep, of: task.id, mostKg: task.weightKg };
    return html`<scale-pad
      .say=${say}
      .asks=${asks}
      .keeps=${[keep]}
      fine
      @weighed=${({ detail }: CustomEvent<Weighed>) => this.#keep(task.id, detail.weightKg)}
    ></scale-pad>`;
  }

  #weighs(person: PersonId): void {
    this.first = person;
  }

  #reads(person: PersonId): void {
    this.second = person;
  }

  #keep(task: TaskView['id'], weightKg: Kilograms): void {
    const { first, second } = this;
    if (first === null || second === null) return;
    this.ask({ kind: 'weighCure', task, weightKg, first, second });
  }

  get #close(): Choice {
    return { label: this.words.close, choose: () => this.tell('close', null), leaves: true };
  }

  #choices(name: string, choices: readonly Choice[]) {
    return html`<choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>`;
  }
}
