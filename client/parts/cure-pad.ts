import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Kilograms, PersonId } from '../../shared/kernel/index.ts';
import { fromPounds, kilograms } from '../../shared/kernel/index.ts';
import type { Person, TaskView } from '../../shared/view/index.ts';
import { cureWords, scaleWeight, textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import './digit-keys.ts';
import { Part } from './part.ts';

const OUNCES_PER_POUND = 16;
/** Letters of a number: no cure of a batch is heavier. */
const MOST_SIGNS = 6;

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
      .keys {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap);
      }
      output {
        font-weight: 800;
      }
    `,
  ];

  @property({ attribute: false }) task: TaskView | null = null;
  @property({ attribute: false }) people: readonly Person[] = [];
  @state() private first: PersonId | null = null;
  @state() private second: PersonId | null = null;
  @state() private typed = '';

  protected override draw() {
    const { task, first, second } = this;
    if (!task?.cure) return nothing;
    const words = cureWords[this.say.language];
    if (first === null) return this.#who(words.whoWeighs, (id) => this.#weighs(id));
    if (second === null) return this.#who(words.whoReads, (id) => this.#reads(id));
    return this.#amount(task.id, task.cure);
  }

  #who(question: string, choose: (id: PersonId) => void) {
    const names = this.people
      .filter(({ id, onShift, isOut }) => onShift && !isOut && id !== this.first)
      .map(({ id, name }) => ({ label: name, choose: () => choose(id) }));
    return html`<p>${question}</p>
      ${this.#choices(question, [...names, this.#close])}`;
  }

  #amount(task: TaskView['id'], cure: NonNullable<TaskView['cure']>) {
    const { say, typed } = this;
    const words = cureWords[say.language];
    const asked = words.asked(scaleWeight(cure.weightKg, say), textIn(cure.mix, say));
    const unit = say.weight === 'kg' ? 'g' : 'oz';
    const keep = { label: this.words.keep, choose: () => this.#keep(task), takes: true };
    return html`<p>${asked} <output>${typed === '' ? '–' : typed} ${unit}</output></p>
      <div class="keys">
        <digit-keys
          .say=${say}
          .typed=${typed}
          .most=${MOST_SIGNS}
          point
          @typed=${({ detail }: CustomEvent<string>) => {
            this.typed = detail;
          }}
          @leave=${() => this.tell('close', null)}
        ></digit-keys>
        ${this.#choices(asked, [keep, this.#close])}
      </div>`;
  }

  #weighs(person: PersonId): void {
    this.first = person;
  }

  #reads(person: PersonId): void {
    this.second = person;
  }

  #keep(task: TaskView['id']): void {
    const { first, second, typed } = this;
    const amount = Number(typed);
    if (first === null || second === null || !(amount > 0)) return;
    this.ask({ kind: 'weighCure', task, weightKg: this.#kilograms(amount), first, second });
  }

  #kilograms(shown: number): Kilograms {
    return this.say.weight === 'kg'
      ? kilograms(shown / 1000)
      : fromPounds(shown / OUNCES_PER_POUND);
  }

  get #close(): Choice {
    return { label: this.words.close, choose: () => this.tell('close', null), leaves: true };
  }

  #choices(name: string, choices: readonly Choice[]) {
    return html`<choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>`;
  }
}
