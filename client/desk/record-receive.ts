import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  celsius,
  fahrenheit,
  fromPounds,
  kilograms,
  toCelsius,
} from '../../shared/kernel/index.ts';
import type { CutShown } from '../../shared/protocol/index.ts';
import { recordDeskWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { recordStyle } from './record-style.ts';

/** What is written down of a lot as it comes. Tells `came` with it. */
@customElement('record-receive')
export class RecordReceive extends Part {
  static override styles = [base, recordStyle];

  /** All that can come, those of the pull list first. */
  @property({ attribute: false }) cuts: readonly CutShown[] = [];
  @property({ type: Boolean }) closed = false;

  protected override draw() {
    const { say, closed } = this;
    const words = recordDeskWords[say.language];
    const field = (label: string, name: string, input: unknown) =>
      html`<label for=${name}>${label} ${input}</label>`;
    return html`<h2>${words.receive}</h2>
      <form @submit=${this.#keep}>
        ${field(
          words.cut,
          'cut',
          html`<select id="cut" name="cut">
            ${this.#group(words.pulledToday, true)} ${this.#group(words.otherCuts, false)}
          </select>`,
        )}
        ${field(words.pieces, 'pieces', number('pieces', 1))}
        ${field(`${words.weight}, ${say.weight}`, 'weight', number('weight', 0.01))}
        ${field(words.supplier, 'supplier', text('supplier', true))}
        ${field(`${words.temp}, ${say.temperature}`, 'temp', number('temp', 0.1, false))}
        ${field(words.useBy, 'use-by', html`<input id="use-by" name="useBy" type="date" />`)}
        ${field(words.code, 'code', text('code', false))}
        <button class="takes" ?disabled=${closed}>${words.itCame}</button>
      </form>`;
  }

  #group(label: string, isPulled: boolean) {
    const own = this.cuts.filter((each) => each.isPulled === isPulled);
    if (own.length === 0) return nothing;
    return html`<optgroup label=${label}>
      ${own.map(({ cut, name }) => html`<option value=${cut}>${textIn(name, this.say)}</option>`)}
    </optgroup>`;
  }

  readonly #keep = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const said = new FormData(form);
    const word = (name: string) => String(said.get(name) ?? '').trim();
    const { weight, temperature } = this.say;
    const typedKg = Number(word('weight'));
    const temp = word('temp') === '' ? null : Number(word('temp'));
    this.tell('came', {
      cut: word('cut'),
      pieces: Number(word('pieces')),
      weightKg: weight === 'lb' ? fromPounds(typedKg) : kilograms(typedKg),
      supplier: word('supplier'),
      tempC:
        temp === null || temperature === '°C' ? temp && celsius(temp) : toCelsius(fahrenheit(temp)),
      useBy: word('useBy') || null,
      code: word('code') || null,
    });
    form.reset();
  };
}

const text = (name: string, isNeeded: boolean) =>
  html`<input id=${name} name=${name} size="14" maxlength="80" ?required=${isNeeded} />`;

const number = (name: string, step: number, isNeeded = true) =>
  html`<input
    id=${name}
    name=${name}
    type="number"
    inputmode="decimal"
    step=${step}
    min=${isNeeded ? step : -99}
    max="99999"
    size="6"
    ?required=${isNeeded}
  />`;
