import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Kilograms } from '../../shared/kernel/index.ts';
import { fromPounds, kilograms } from '../../shared/kernel/index.ts';
import { base } from '../theme/index.ts';
import './choice-strip.ts';
import './digit-keys.ts';
import { Part } from './part.ts';

/** Letters of a number: nothing on a bench scale is heavier. */
const MOST_SIGNS = 6;

/** A box that keeps what was typed, for one of several things that may lie on the scale. */
export type Keep = {
  readonly label: string;
  readonly of: string;
  /** No more of it can be there. */
  readonly mostKg: Kilograms;
};

/** What was read off the scale, and of what. */
export type Weighed = { readonly of: string; readonly weightKg: Kilograms };

/** What one of the scale's figures weighs: where a spoon too much matters, grams or ounces. */
const UNITS = {
  kg: { unit: 'kg', oneKg: kilograms(1) },
  g: { unit: 'g', oneKg: kilograms(0.001) },
  lb: { unit: 'lb', oneKg: fromPounds(1) },
  oz: { unit: 'oz', oneKg: fromPounds(1 / 16) },
} as const;

/**
 * Digits for a weight, as the scale shows it, and what it can be; a box keeps it. What cannot be is
 * said with that range, and stays to be mended; nothing is sent. Tells `weighed`, or `close`.
 */
@customElement('scale-pad')
export class ScalePad extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap);
        container-type: inline-size;
      }
      .keys {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap);
      }
      /* Two rows of boxes where a line under Now has room for no more. */
      @container (min-width: 480px) {
        choice-strip {
          flex: 1 1 100%;
          flex-wrap: nowrap;
          --label-space: normal;
        }
      }
      output,
      .wrong {
        font-weight: 800;
      }
    `,
  ];

  /** What is to be weighed, in words. */
  @property() asks = '';
  /** Read in grams or ounces. */
  @property({ type: Boolean }) fine = false;
  @property({ attribute: false }) keeps: readonly Keep[] = [];
  @state() private typed = '';
  @state() private wrong: Keep | null = null;

  protected override draw() {
    const { say, typed, wrong } = this;
    const { unit } = this.#unit;
    const choices = [
      ...this.keeps.map((keep) => ({
        label: keep.label,
        choose: () => this.#keep(keep),
        takes: true,
      })),
      { label: this.words.close, choose: () => this.tell('close', null), leaves: true },
    ];
    const can = this.words.upTo(`${this.#mostShown(wrong ? [wrong] : this.keeps)} ${unit}`);
    return html`<p>
        ${this.asks} <output>${typed === '' ? '–' : typed} ${unit}</output>
        <span class=${wrong ? 'wrong' : ''} role=${wrong ? 'alert' : 'note'}>(${can})</span>
      </p>
      <div class="keys">
        <digit-keys
          .say=${say}
          .typed=${typed}
          .most=${MOST_SIGNS}
          point
          @typed=${({ detail }: CustomEvent<string>) => this.#type(detail)}
          @leave=${() => this.tell('close', null)}
        ></digit-keys>
        <choice-strip .say=${say} .name=${this.asks} .choices=${choices}></choice-strip>
      </div>`;
  }

  get #unit() {
    const isMetric = this.say.weight === 'kg';
    if (this.fine) return isMetric ? UNITS.g : UNITS.oz;
    return isMetric ? UNITS.kg : UNITS.lb;
  }

  /** In whole tenths, and rounded down: what is said can be kept. */
  #mostShown(keeps: readonly Keep[]): number {
    const mostKg = Math.max(0, ...keeps.map((keep) => keep.mostKg));
    return Math.floor((10 * mostKg) / this.#unit.oneKg) / 10;
  }

  #type(typed: string): void {
    this.typed = typed;
    this.wrong = null;
  }

  #keep(keep: Keep): void {
    const shown = Number(this.typed);
    this.wrong = shown > 0 && shown <= this.#mostShown([keep]) ? null : keep;
    if (this.wrong) return;
    this.typed = '';
    this.tell<Weighed>('weighed', {
      of: keep.of,
      weightKg: kilograms(shown * this.#unit.oneKg),
    });
  }
}
