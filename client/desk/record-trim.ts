import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fromPounds, kilograms } from '../../shared/kernel/index.ts';
import type { TrimShown } from '../../shared/protocol/index.ts';
import { recordDeskWords, textIn, weight } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { recordStyle } from './record-style.ts';

/** Trim as it is reckoned, to be put over the scale. Tells `weighed` with a tub and its weight. */
@customElement('record-trim')
export class RecordTrim extends Part {
  static override styles = [base, recordStyle];

  @property({ attribute: false }) trim: readonly TrimShown[] = [];
  @property({ type: Boolean }) closed = false;

  protected override draw() {
    const { say, trim } = this;
    if (trim.length === 0) return nothing;
    return html`<h2>${recordDeskWords[say.language].tubs}</h2>
      <ul>
        ${trim.map((each) => this.#tub(each))}
      </ul>`;
  }

  #tub({ batch, name, tub, tubName, weightKg, isWeighed }: TrimShown) {
    const { say } = this;
    const words = recordDeskWords[say.language];
    const called = `${textIn(tubName, say)} · ${textIn(name, say)}`;
    const keep = (event: SubmitEvent) => {
      event.preventDefault();
      const form = event.target as HTMLFormElement;
      const typed = Number(new FormData(form).get('weight'));
      const shownKg = say.weight === 'lb' ? fromPounds(typed) : kilograms(typed);
      this.tell('weighed', { batch, tub, weightKg: shownKg });
      form.reset();
    };
    return html`<li>
      <span class="name">${called}</span>
      <span class="figure">${weight(weightKg, say)}</span>
      <span class="soft">${isWeighed ? words.weighed : words.reckoned}</span>
      <form @submit=${keep}>
        <input
          name="weight"
          type="number"
          inputmode="decimal"
          min="0"
          step="0.01"
          size="6"
          required
          aria-label=${`${words.weight}, ${say.weight}: ${called}`}
        />
        <button ?disabled=${this.closed}>${words.weigh}</button>
      </form>
    </li>`;
  }
}
