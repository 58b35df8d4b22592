import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanShown } from '../../shared/protocol/index.ts';
import { planEditorWords, sayKept } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
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
    const { day, days } = this;
    const said = planEditorWords[this.say.language];
    const next = weekAfter(day);
    const others = days.filter((each) => each !== day);
    return html`<div class="row">
      <label>
        ${said.day}
        <input type="date" .value=${day} @change=${this.#to} />
      </label>
      <button @click=${() => this.tell('to-day', next)}>${said.copyTo} ${next}</button>
      <label>
        ${said.copyFrom}
        <select ?disabled=${others.length === 0} @change=${this.#from}>
          <option value="" selected>–</option>
          ${others.map((each) => html`<option value=${each}>${each}</option>`)}
        </select>
      </label>
    </div>
    ${sayKept(this.kept, this.say).map((line) => html`<p>${line}</p>`)}`;
  }

  readonly #to = ({ target }: Event) => {
    const day = (target as HTMLInputElement).value;
    if (day !== '') this.tell('to-day', day);
  };

  readonly #from = ({ target }: Event) => {
    const select = target as HTMLSelectElement;
    const day = select.value;
    select.value = '';
    if (day !== '') this.tell('from-day', day);
  };
}
