import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Wanted } from '../../shared/protocol/index.ts';
import { sayAlert, sayRates } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Heard } from './heard.ts';
import { Part } from './part.ts';

/**
 * Who is wanted for what and by when, a row for each; and at the desk how often whom was called, if
 * anybody was. There is nothing to tap: what is done is gone.
 */
@customElement('alert-line')
export class AlertLine extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        font-size: var(--small);
        line-height: 1.25;
        border-bottom: var(--line) solid var(--ink);
      }
      p {
        padding: 0.15em var(--edge);
        border-left: calc(2 * var(--heavy)) solid var(--brick);
        font-weight: 800;
      }
      .rates {
        border-left-color: transparent;
        font-weight: 600;
        color: var(--soft);
      }
    `,
  ];

  @property({ attribute: false }) shown: Wanted | null = null;
  /** Says how often whom was called, too. */
  @property({ type: Boolean }) rates = false;

  readonly #heard = new Heard(this);

  get #saysRates(): boolean {
    return this.rates && this.shown?.rates.length !== 0;
  }

  protected override willUpdate(): void {
    this.hidden = !this.shown || (this.shown.notices.length === 0 && !this.#saysRates);
  }

  protected override draw() {
    const { shown, say } = this;
    if (!shown) return nothing;
    const said = shown.notices.map((notice) => sayAlert(notice, say));
    return html`${said.map((each) => html`<p>${each}</p>`)}
      <span class="unseen" role="status">${this.#heard.of(said.join(' '))}</span>
      ${this.#saysRates ? html`<p class="rates">${sayRates(shown.rates, say)}</p>` : nothing}`;
  }
}
