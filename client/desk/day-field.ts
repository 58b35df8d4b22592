import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { sayDay } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';

/**
 * A day, written as the desk writes every day; a tap opens the browser's own calendar over it, and
 * a keyboard types into its field. Tells `to-day` with another.
 */
@customElement('day-field')
export class DayField extends Part {
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
    `,
  ];

  @property() label = '';
  @property() day = '';

  protected override draw() {
    return html`<label>
      ${this.label}
      <span class="field">
        <span aria-hidden="true">${sayDay(this.day, this.say)}</span>
        <input type="date" .value=${this.day} @change=${this.#pick} @click=${this.#open} />
      </span>
    </label>`;
  }

  readonly #open = ({ target }: Event) => {
    (target as HTMLInputElement).showPicker();
  };

  readonly #pick = ({ target }: Event) => {
    const day = (target as HTMLInputElement).value;
    if (day !== '') this.tell('to-day', day);
  };
}
