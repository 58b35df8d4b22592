import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanShown } from '../../shared/protocol/index.ts';
import { planEditorWords, sayDay } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { weekAfter } from './new-in-plan.ts';
import { planStyle } from './plan-editor.css.ts';

/**
 * The way from one day's plan to another's. Tells `to-day` with the day that it is wanted for too,
 * `from-day` with one to copy.
 */
@customElement('plan-day')
export class PlanDay extends Part {
  static override styles = [base, formStyle, planStyle];

  @property() day = '';
  @property({ attribute: false }) days: PlanShown['days'] = [];

  protected override draw() {
    const { day, days, say } = this;
    const said = planEditorWords[say.language];
    const next = weekAfter(day);
    const others = days.filter((each) => each !== day);
    return html`<div class="buttons">
      <button @click=${() => this.tell('to-day', next)}>
        ${said.copyTo} ${sayDay(next, say)}
      </button>
      ${others.length > 0 ? this.#copied(others) : nothing}
    </div>`;
  }

  #copied(others: readonly string[]) {
    const { say } = this;
    const said = planEditorWords[say.language];
    return html`<label>
      ${said.copyFrom}
      <select @change=${this.#from}>
        <option value="" selected>${said.anotherDay}</option>
        ${others.map((each) => html`<option value=${each}>${sayDay(each, say)}</option>`)}
      </select>
    </label>`;
  }

  readonly #from = ({ target }: Event) => {
    const select = target as HTMLSelectElement;
    const day = select.value;
    select.value = '';
    if (day !== '') this.tell('from-day', day);
  };
}
