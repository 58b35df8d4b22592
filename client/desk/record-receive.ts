import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  celsius,
  fahrenheit,
  fromPounds,
  type Instant,
  kilograms,
  toCelsius,
  wallTime,
} from '../../shared/kernel/index.ts';
import type { CutShown } from '../../shared/protocol/index.ts';
import type { CheckView } from '../../shared/view/index.ts';
import { oddLot } from '../../shared/view/index.ts';
import {
  checkWords,
  oddWords,
  recordDeskWords,
  sayCheckRow,
  sayOdd,
  textIn,
} from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './day-field.ts';
import { KeepsFocus } from './keeps-focus.ts';
import { recordStyle } from './record-style.ts';
import { type TypedLot, typedLot } from './typed-lot.ts';

/**
 * What is written down of a lot as it comes. Tells `came` with it; a field that cannot be so is
 * said, and what was typed stays; what is seldom so is taken once somebody says that it is. What
 * came too warm is said until somebody says what was done.
 */
@customElement('record-receive')
export class RecordReceive extends Part {
  static override styles = [base, recordStyle];

  /** All that can come, those of the pull list first. */
  @property({ attribute: false }) cuts: readonly CutShown[] = [];
  @property({ type: Boolean }) closed = false;
  @property({ attribute: false }) now!: () => Instant;
  /** What came so that its limit was broken. */
  @property({ attribute: false }) broken: readonly CheckView[] = [];
  @state() private useBy = '';
  @state() private wrong: { readonly field: string; readonly why: string } | null = null;

  /** What is asked once more before it is taken. */
  @state() private odd: { readonly lot: Lot; readonly why: string } | null = null;

  constructor() {
    super();
    new KeepsFocus(this);
  }

  protected override draw() {
    const { say, closed } = this;
    const words = recordDeskWords[say.language];
    const field = (label: string, name: string, input: unknown) =>
      html`<label for=${name}><span class="called">${label}</span> ${input}</label>`;
    return html`<h2>${words.receive}</h2>
      <form
        class="fields"
        novalidate
        @submit=${this.#keep}
        @input=${this.#typeOn}
        @change=${this.#typeOn}
      >
        ${field(
          words.cut,
          'cut',
          html`<select id="cut" name="cut">
            ${this.#group(words.pulledToday, true)} ${this.#group(words.otherCuts, false)}
          </select>`,
        )}
        ${field(words.pieces, 'pieces', number('pieces', 'numeric'))}
        ${field(`${words.weight}, ${say.weight}`, 'weight', number('weight', 'decimal'))}
        ${field(words.supplier, 'supplier', text('supplier'))}
        ${field(`${words.temp}, ${say.temperature}`, 'temp', number('temp', 'text'))}
        <day-field
          over
          data-name="useBy"
          .say=${say}
          .label=${words.useBy}
          .none=${words.noDay}
          .day=${this.useBy}
          @to-day=${({ detail }: CustomEvent<string>) => {
            this.useBy = detail;
            this.#typeOn();
          }}
        ></day-field>
        ${field(words.code, 'code', text('code'))}
        <button class="takes" ?disabled=${closed}>${words.itCame}</button>
      </form>
      ${this.wrong ? html`<p class="wrong" role="alert">${this.wrong.why}</p>` : nothing}
      ${this.odd ? this.#asks(this.odd) : nothing}
      ${this.broken.map((check) => this.#broken(check))}`;
  }

  #group(label: string, isPulled: boolean) {
    const own = this.cuts.filter(({ listed }) => (listed !== null) === isPulled);
    if (own.length === 0) return nothing;
    return html`<optgroup label=${label}>
      ${own.map(({ cut, name }) => html`<option value=${cut}>${textIn(name, this.say)}</option>`)}
    </optgroup>`;
  }

  #asks({ lot, why }: NonNullable<RecordReceive['odd']>) {
    const choices = [
      { label: this.words.leaveIt, choose: this.#typeOn, leaves: true },
      {
        label: oddWords[this.say.language].itIsSo,
        choose: () => this.#came({ ...lot, isSo: true }),
        takes: true,
      },
    ];
    return html`<p class="wrong" role="alert">${why}</p>
      <choice-strip .say=${this.say} .name=${why} .choices=${choices}></choice-strip>`;
  }

  /** What was asked about is no longer what stands there. */
  readonly #typeOn = (): void => {
    this.odd = null;
  };

  #came(lot: Lot): void {
    this.tell('came', lot);
    this.renderRoot.querySelector('form')?.reset();
    this.useBy = '';
    this.odd = null;
  }

  /** The hub asks the same of whatever comes to it without this question. */
  #oddIn(lot: Lot) {
    const { temperature, zone } = this.say;
    const cut = this.cuts.find((each) => each.cut === lot.cut);
    const usual = { eachKg: cut?.usualKg ?? 0, listed: cut?.listed ?? null };
    const today = wallTime(this.now(), zone).day;
    return oddLot(lot, { ...usual, temperature, today });
  }

  #broken(check: CheckView) {
    const { say } = this;
    return html`<p class="wrong" role="alert">
      ${textIn(check.thing, say)} · ${sayCheckRow(check, say)}
      <a href="#safety">${checkWords[say.language].whatWasDone}</a>
    </p>`;
  }

  readonly #keep = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const said = new FormData(form);
    const { say } = this;
    const word = (name: string) =>
      name === 'useBy' ? this.useBy : String(said.get(name) ?? '').trim();
    const typed = typedLot(word, {
      ...{ say, now: this.now() },
      kgOf: inUnit(say.weight === 'lb' ? fromPounds : kilograms),
      celsiusOf: inUnit((shown) =>
        say.temperature === '°F' ? toCelsius(fahrenheit(shown)) : celsius(shown),
      ),
    });
    this.wrong = typed.ok ? null : typed;
    this.odd = null;
    if (typed.ok) {
      const { lot } = typed;
      const odd = this.#oddIn(lot);
      if (odd.length === 0) this.#came(lot);
      else this.odd = { lot, why: sayOdd(odd, say) };
    } else {
      const { field } = typed;
      form.querySelector<HTMLElement>(`[name="${field}"], [data-name="${field}"]`)?.focus();
    }
  };
}

type Lot = Extract<TypedLot, { ok: true }>['lot'];

/** A point or a comma before its tenths, and either sign for below zero. */
const inUnit =
  <To>(of: (shown: number) => To) =>
  (typed: string): To | null => {
    const shown = typed === '' ? Number.NaN : Number(typed.replace(',', '.').replace('−', '-'));
    return Number.isFinite(shown) ? of(shown) : null;
  };

const text = (name: string) =>
  html`<input id=${name} name=${name} size="14" maxlength="80" autocomplete="off" />`;

/**
 * As text: what is no number in it is said by us, not swallowed. The keys that a tablet has for a
 * decimal may lack the sign of what comes frozen.
 */
const number = (name: string, inputmode: 'numeric' | 'decimal' | 'text') =>
  html`<input id=${name} name=${name} inputmode=${inputmode} size="6" autocomplete="off" />`;
