import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { METRES_PER_INCH } from '../../shared/kernel/index.ts';
import { startWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

type Measure = 'diagonal' | 'distance';
type Unit = 'inches' | 'feet' | 'centimetres' | 'metres';

/** How it is measured where meat is weighed so, and how much that is of what is kept. */
const UNITS: Readonly<Record<'lb' | 'kg', Readonly<Record<Measure, readonly [Unit, number]>>>> = {
  lb: { diagonal: ['inches', 1], distance: ['feet', 12 * METRES_PER_INCH] },
  kg: { diagonal: ['centimetres', 0.01 / METRES_PER_INCH], distance: ['metres', 1] },
};

/** A tape is read to a tenth; what is kept is fine enough to come back as it was typed. */
const shown = (value: number) => String(Math.round(value * 10) / 10);
const kept = (value: number) => String(Math.round(value * 10_000) / 10_000);

/** How large the glass is and from where it is read, in the kitchen's units (`keep`). */
@customElement('glass-fields')
export class GlassFields extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap);
      }
      label {
        display: grid;
        grid-template-columns: minmax(0, 1fr) 3.4em 5.8em;
        align-items: end;
        line-height: 1.5;
        gap: 0.6em;
      }
      input {
        width: 100%;
        min-width: 0;
        min-height: var(--touch);
        padding-top: max(0px, calc(var(--touch) - 1.5em));
        border-bottom: var(--line) solid var(--ink);
        text-align: right;
        font-weight: 800;
      }
      .wrong {
        font-weight: 800;
      }
      @media (width < 45em) {
        label {
          grid-template-columns: minmax(0, 3.4em) minmax(0, 1fr);
        }
        .name {
          grid-column: 1 / -1;
        }
      }
    `,
  ];

  /** As it is kept: inches, metres; empty where it was never said. */
  @property() diagonal = '';
  @property() distance = '';
  /** Both were said, and are a screen. */
  @property({ type: Boolean }) measured = false;

  protected override draw() {
    const said = startWords[this.say.language];
    const has = [this.diagonal, this.distance].filter((each) => each !== '').length;
    const wrong = has === 1 ? said.bothNeeded : has === 2 && !this.measured && said.cannotBe;
    return html`${this.#field('diagonal', said.across)} ${this.#field('distance', said.away)}
      ${wrong ? html`<p class="wrong" role="status">${wrong}</p>` : nothing}`;
  }

  #field(measure: Measure, name: string) {
    const [unit, one] = UNITS[this.say.weight][measure];
    const value = this[measure];
    const keep = ({ target }: Event) => {
      const typed = Number.parseFloat((target as HTMLInputElement).value.replace(',', '.'));
      this.tell('keep', { setting: measure, word: typed > 0 ? kept(typed * one) : '' });
    };
    return html`<label>
      <span class="name">${name}</span>
      <input
        inputmode="decimal"
        autocomplete="off"
        .value=${value === '' ? '' : shown(Number(value) / one)}
        @change=${keep}
      />
      <span>${startWords[this.say.language].units[unit]}</span>
    </label>`;
  }
}
