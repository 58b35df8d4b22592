import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

/** A sign or a point alone is no number yet. */
export const hasDigit = (typed: string): boolean => /\d/.test(typed);

/** A dash where nothing is typed; a sign alone must not look like one. */
export const shownTyped = (typed: string): string => (typed === '-' ? '-…' : typed || '–');

/** Below zero, before the digits are typed or after; a second time it is above again. */
export const turned = (typed: string): string =>
  typed.startsWith('-') ? typed.slice(1) : `-${typed}`;

/**
 * Keys for a number, each as large as a finger, and the keyboard's own. Tells `typed` with all
 * that is typed then, and `leave` for Escape.
 */
@customElement('digit-keys')
export class DigitKeys extends Part {
  static override styles = [
    base,
    css`
      /* They lie in a row with what is done with the number. */
      :host {
        display: contents;
      }
      button {
        border: var(--line) solid var(--ink);
        font-weight: 800;
        text-align: center;
        min-width: max(var(--touch), 1.6em);
        padding: 0 0.2em;
      }
    `,
  ];

  /** What has been typed so far. */
  @property() typed = '';
  @property({ type: Number }) most = 3;
  /** Whether a part of one can be typed. */
  @property({ type: Boolean }) point = false;
  /** Tenths from a keyboard, for which there is no room among the keys on the glass. */
  @property({ type: Boolean }) tenths = false;
  /** Whether it can lie below zero: a freezer does. */
  @property({ type: Boolean }) signed = false;
  /** The key for it stands elsewhere. */
  @property({ type: Boolean }) beside = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('keydown', this.#onKey);
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('button')?.focus();
  }

  protected override draw() {
    const { belowZero, erase } = this.words;
    return html`${[...'1234567890'].map((digit) => this.#key(digit))}
      ${this.point ? this.#key('.') : nothing}
      ${this.signed && !this.beside ? this.#key('−', belowZero) : nothing}
      <button data-quick @click=${() => this.#erase()}>${erase}</button>`;
  }

  #key(sign: string, name?: string) {
    return html`<button
      data-quick
      aria-label=${name ?? nothing}
      @click=${() => this.#type(sign)}
    >
      ${sign}
    </button>`;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    if (/^\d$/.test(event.key)) this.#type(event.key);
    else if ((this.point || this.tenths) && /^[.,]$/.test(event.key)) this.#type('.');
    else if (this.signed && /^[-−]$/.test(event.key)) this.#type('−');
    else if (event.key === 'Backspace') this.#erase();
    else if (event.key === 'Escape') this.tell('leave', null);
  };

  #type(sign: string): void {
    const { typed, tenths, most } = this;
    if (sign === '.' && typed.includes('.')) return;
    const below = typed.startsWith('-') ? '-' : '';
    const digits = typed.slice(below.length) + sign;
    // A tenth is never left out, nor taken for the next figure: 5,4 is not 54, nor is it 5.
    const end = tenths && digits.includes('.') ? digits.indexOf('.') + 2 : most;
    this.tell('typed', sign === '−' ? turned(typed) : below + digits.slice(0, end));
  }

  #erase(): void {
    this.tell('typed', this.typed.slice(0, -1));
  }
}
