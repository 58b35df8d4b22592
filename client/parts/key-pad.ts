import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Celsius } from '../../shared/kernel/index.ts';
import { celsius, fahrenheit, toCelsius } from '../../shared/kernel/index.ts';
import { checkWords, temperature } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import { hasDigit, shownTyped, turned } from './digit-keys.ts';
import { Part } from './part.ts';

const MOST_DIGITS = 3;

/** What a reading may be kept as besides. */
export type Way = { readonly label: string; readonly way: string };

/**
 * Digits for a temperature, in the kitchen's unit. What no thermometer shows is said in the place
 * of the name and stays to be mended: nothing may push a box out of the pit's foot, which is two
 * boxes high. Tells `read` with the temperature, `read-as` with it and a way, or `close`.
 */
@customElement('key-pad')
export class KeyPad extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap);
      }
      /* What is read stands beside two rows of boxes: the pit's foot is no higher than those. */
      .read {
        flex: 1 1 5.6em;
        min-width: min-content;
      }
      .boxes {
        flex: 6 1 480px;
        container-type: inline-size;
      }
      .keys {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap);
        margin-bottom: var(--gap);
      }
      @container (min-width: 480px) {
        .keys,
        choice-strip {
          flex-wrap: nowrap;
        }
        choice-strip {
          --label-space: normal;
        }
      }
      .number {
        display: flex;
        align-items: center;
        gap: var(--gap);
      }
      .sign {
        border: var(--line) solid var(--ink);
        font-weight: 800;
        text-align: center;
      }
      output {
        flex: 1;
        font-size: var(--figure);
        font-weight: 800;
        min-width: 5.2ch;
        border-bottom: var(--heavy) solid var(--ink);
        white-space: nowrap;
        line-height: 1.1;
      }
      .name,
      .wrong {
        line-height: 1.1;
      }
      .name,
      choice-strip,
      .wrong {
        font-size: var(--small);
        font-weight: 700;
      }
    `,
  ];

  /** What is read: `Smoker A, air`. */
  @property() name = '';
  @property({ type: Number }) lowC: Celsius = celsius(-40);
  @property({ type: Number }) highC: Celsius = celsius(450);
  /** Boxes that keep the reading as something more than one; their `way` is told beside it. */
  @property({ attribute: false }) ways: readonly Way[] = [];
  /** Boxes for what needs no reading. */
  @property({ attribute: false }) besides: readonly Choice[] = [];
  @state() private digits = '';
  @state() private isWrong = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.ariaLabel = this.name;
    this.role = 'group';
  }

  protected override draw() {
    const { words, say } = this;
    const choices = [
      { label: words.keep, choose: () => this.#keep(null), takes: true },
      ...this.ways.map(({ label, way }) => ({ label, choose: () => this.#keep(way) })),
      ...this.besides,
      { label: words.leaveIt, choose: () => this.tell('close', null), leaves: true },
    ];
    const name = html`<p class="name">${this.name}</p>`;
    return html`<div class="read">
        ${this.isWrong ? html`<p class="wrong" role="alert">${this.#why()}</p>` : name}
        <div class="number">
          ${this.lowC < 0 ? this.#sign() : nothing}
          <output>${shownTyped(this.digits)} ${say.temperature}</output>
        </div>
      </div>
      <div class="boxes">
        <div class="keys">
          <digit-keys
            .say=${say}
            .typed=${this.digits}
            .most=${MOST_DIGITS}
            tenths
            beside
            ?signed=${this.lowC < 0}
            @typed=${({ detail }: CustomEvent<string>) => this.#type(detail)}
            @leave=${() => this.tell('close', null)}
          ></digit-keys>
        </div>
        <choice-strip .say=${say} .name=${this.name} .choices=${choices}></choice-strip>
      </div>`;
  }

  /** Where a sign stands: among the keys a panel has no room for one more. */
  #sign() {
    return html`<button
      class="sign"
      data-quick
      aria-label=${this.words.belowZero}
      @click=${() => this.#type(turned(this.digits))}
    >
      −
    </button>`;
  }

  #why(): string {
    const { say } = this;
    if (!hasDigit(this.digits)) return checkWords[say.language].typeIt;
    return this.words.between(temperature(this.lowC, say), temperature(this.highC, say));
  }

  #type(digits: string): void {
    this.digits = digits;
    this.isWrong = false;
  }

  #keep(way: string | null): void {
    const shown = Number(this.digits);
    const tempC = this.say.temperature === '°F' ? toCelsius(fahrenheit(shown)) : celsius(shown);
    const isPlausible = hasDigit(this.digits) && tempC >= this.lowC && tempC <= this.highC;
    if (isPlausible && way === null) this.tell('read', tempC);
    else if (isPlausible) this.tell('read-as', { tempC, way });
    this.isWrong = !isPlausible;
  }
}
