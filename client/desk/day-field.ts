import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { sayDay } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';

/**
 * A day, written as the desk writes every day; a tap opens the browser's own calendar over it, and
 * a keyboard types into its field. Tells `to-day` with another; one that may have no day says so in
 * the word of `none`, and tells an empty one where it is cleared. With `over` its name stands over
 * it; `large` is one that a page is about.
 */
@customElement('day-field')
export class DayField extends Part {
  static override shadowRootOptions = { ...Part.shadowRootOptions, delegatesFocus: true };

  static override styles = [
    base,
    formStyle,
    css`
      .field {
        position: relative;
        display: inline-grid;
        align-items: center;
        min-height: var(--touch);
        border-bottom: var(--line) solid var(--ink);
        font-weight: 700;
      }
      .field > * {
        grid-area: 1 / 1;
      }
      input:not(:focus) {
        opacity: 0;
      }
      .field:focus-within span {
        visibility: hidden;
      }
      /* Which is the day and which the month of what is being typed, in words. */
      label:not(:focus-within) .typed {
        display: none;
      }
      :host([large]) .field {
        border-bottom: none;
        font-size: var(--strong);
        font-weight: 800;
      }
      :host([large]) .field > span {
        text-decoration: underline var(--line);
        text-underline-offset: 0.25em;
      }
      :host([large]) input[type='date'] {
        width: 7.4em;
        font-size: var(--body);
      }
      :host([over]) label {
        display: grid;
        align-content: end;
        gap: 0;
      }
      :host([over]) .called {
        font-size: var(--small);
        color: var(--soft);
        font-weight: 600;
      }
      :host([over]) label :is(.field, input[type='date']) {
        min-height: 2em;
        min-width: 0;
      }
    `,
  ];

  @property() label = '';
  @property() day = '';
  @property() none = '';
  @property() min = '';
  @property() max = '';

  protected override draw() {
    const { day, say, none, min, max } = this;
    return html`<label>
      <span class=${this.hasAttribute('large') ? 'unseen' : 'called'}>
        ${this.label}<span class="typed" aria-hidden="true"> · ${sayDay(day, say)}</span>
      </span>
      <span class="field">
        <span aria-hidden="true">${day === '' ? none : sayDay(day, say)}</span>
        <input
          type="date"
          min=${min || nothing}
          max=${max || nothing}
          .value=${day}
          @change=${this.#pick}
          @click=${this.#open}
          @keydown=${this.#send}
        />
      </span>
    </label>`;
  }

  readonly #open = ({ target }: Event) => {
    (target as HTMLInputElement).showPicker();
  };

  /** A browser sends a form from its own fields alone, and not from one inside a part. */
  readonly #send = (event: KeyboardEvent) => {
    const form = this.closest('form');
    if (event.key !== 'Enter' || !form) return;
    event.preventDefault();
    if ((event.target as HTMLInputElement).value !== this.day) this.#pick(event);
    const box = form.querySelector<HTMLButtonElement>('button:not([type="button"])');
    if (!box?.disabled) form.requestSubmit(box);
  };

  readonly #pick = ({ target }: Event) => {
    const day = (target as HTMLInputElement).value;
    if (day !== '' || this.none !== '') this.tell('to-day', day);
  };
}
