import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { NOTE_MAX, type NoteFault, noteFault } from '../../shared/view/index.ts';
import { base } from '../theme/index.ts';
import './choice-strip.ts';
import { Part } from './part.ts';

/**
 * One line to write on. What cannot be kept is said over it and stays to be mended; nothing is
 * sent. Tells `note` with the words, or `close`.
 */
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
      .wrong {
        font-weight: 800;
        line-height: 1.1;
      }
    `,
  ];

  @state() private wrong: NoteFault | null = null;
  /** Letters that are too many. */
  @state() private over = 0;

  protected override draw() {
    const { words, wrong } = this;
    const choices = [
      { label: words.keep, choose: () => this.#keep(), takes: true },
      { label: words.close, choose: () => this.tell('close', null), leaves: true },
    ];
    const why = wrong && words.noteWrong(wrong, NOTE_MAX, this.over);
    return html`${why ? html`<p class="wrong" role="alert">${why}</p>` : nothing}
      <form @submit=${this.#submit}>
        <input
          aria-label=${words.note}
          aria-invalid=${why ? 'true' : nothing}
          autocomplete="off"
          @input=${this.#write}
        />
        <choice-strip .say=${this.say} .name=${words.note} .choices=${choices}></choice-strip>
      </form>`;
  }

  protected override firstUpdated(): void {
    this.#input?.focus();
  }

  get #input(): HTMLInputElement | null {
    return this.renderRoot.querySelector('input');
  }

  readonly #write = (): void => {
    this.wrong = null;
  };

  #submit(event: Event): void {
    event.preventDefault();
    this.#keep();
  }

  #keep(): void {
    // A browser makes spaces of lines that are pasted, and leaves their tabs.
    const text = this.#input?.value.trim().replace(/\s+/g, ' ') ?? '';
    this.wrong = noteFault(text);
    this.over = text.length - NOTE_MAX;
    if (!this.wrong) this.tell('note', text);
  }
}
