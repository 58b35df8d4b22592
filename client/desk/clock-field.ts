import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { shownClock, typedClock } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';

/**
 * A time of a plan, typed as the kitchen's clock has it. What is being typed stays as it is till
 * the field is left. Tells `clock` with the time as a plan has it.
 */
@customElement('clock-field')
export class ClockField extends Part {
  static override styles = [
    base,
    formStyle,
    css`
      input {
        width: 3.2em;
      }
      .half {
        width: 5em;
      }
    `,
  ];

  @property() label = '';
  @property() time = '';
  @state() private typed: string | null = null;

  protected override draw() {
    const { say, time, typed } = this;
    return html`<label>
      ${this.label}
      <input
        class=${say.clock === '12 h' ? 'half' : ''}
        .value=${typed ?? shownClock(time, say)}
        @input=${this.#type}
        @change=${this.#leave}
        @blur=${this.#leave}
      />
    </label>`;
  }

  readonly #type = ({ target }: Event) => {
    this.typed = (target as HTMLInputElement).value;
    this.tell('clock', typedClock(this.typed));
  };

  readonly #leave = () => {
    this.typed = null;
  };
}
