import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanShown } from '../../shared/protocol/index.ts';
import { planEditorWords, sayDay, sayKept } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './day-field.ts';
import { formStyle } from './form-style.ts';
import { weekAfter } from './new-in-plan.ts';
import { planStyle } from './plan-editor.css.ts';

/**
 * For which day a plan is, and what days before kept for it. Tells `to-day` with another for it,
 * `from-day` with one to copy.
 */
@customElement('plan-day')
export class PlanDay extends Part {
  static override styles = [base, formStyle, planStyle];

  @property() day = '';
  @property({ attribute: false }) days: PlanShown['days'] = [];
  @property({ attribute: false }) kept: PlanShown['kept'] = [];

  protected override draw() {
    const { day, days, say } = this;
    const said = planEditorWords[say.language];
    const next = weekAfter(day);
    const others = days.filter((each) => each !== day);
    return html`<div class="row">
      <day-field .say=${say} .label=${said.day} .day=${day}></day-field>
      <button @click=${() => this.tell('to-day', next)}>
        ${said.copyTo} ${sayDay(next, say)}
      </button>
      <label>
        ${said.copyFrom}
        <select ?disabled=${others.length === 0} @change=${this.#from}>
          <option value="" selected>–</option>
          ${others.map((each) => html`<option value=${each}>${sayDay(each, say)}</option>`)}
        </select>
      </label>
    </div>
    ${sayKept(this.kept, say).map((line) => html`<p>${line}</p>`)}`;
  }

  readonly #from = ({ target }: Event) => {
    const select = target as HTMLSelectElement;
    const day = select.value;
    select.value = '';
    if (day !== '') this.tell('from-day', day);
  };
}
