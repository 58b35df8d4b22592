import { css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { base } from '../theme/index.ts';
import './choice-strip.ts';
import { Part } from './part.ts';

const MOST_LETTERS = 280;

/** One line to write on. Tells `note` with the words, or `close`. */
@customElement('note-pad')
export class NotePad extends Part {
  static override styles = [
    base,
    css`
      form {
        display: flex;
        gap: var(--gap);
        align-items: center;
      }
      input {
        flex: 1;
        min-width: 0;
        min-height: var(--touch);
        border-bottom: var(--line) solid var(--ink);
      }
    `,
  ];

  protected override draw() {
    const choices = [
      { label: this.words.keep, choose: () => this.#keep(), takes: true },
      { label: this.words.close, choose: () => this.tell('close', null), leaves: true },
    ];
    return html`<form @submit=${this.#submit}>
      <input maxlength=${MOST_LETTERS} aria-label=${this.words.note} autocomplete="off" />
      <choice-strip .say=${this.say} .name=${this.words.note} .choices=${choices}></choice-strip>
    </form>`;
  }

  protected override firstUpdated(): void {
    this.#input?.focus();
  }

  get #input(): HTMLInputElement | null {
    return this.renderRoot.querySelector('input');
  }

  #submit(event: Event): void {
    event.preventDefault();
    this.#keep();
  }

  #keep(): void {
    const text = this.#input?.value.trim() ?? '';
    this.tell(text === '' ? 'close' : 'note', text);
  }
}
