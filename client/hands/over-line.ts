import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

/**
 * Says something over a wall for a while: that it is being wiped, or who is called. It lies over
 * what is there, so that nothing moves under a hand, and lets every tap through.
 */
@customElement('over-line')
export class OverLine extends Part {
  static override styles = [
    base,
    css`
      p {
        position: fixed;
        z-index: 9;
        inset: 0 0 auto;
        background: var(--ink);
        color: var(--ground);
        padding: 0.25em var(--edge);
        font-size: var(--small);
        font-weight: 700;
        pointer-events: none;
      }
    `,
  ];

  @state() private said = '';

  #hiding: ReturnType<typeof setTimeout> | undefined;

  showFor(said: string, ms: number): void {
    this.said = said;
    clearTimeout(this.#hiding);
    this.#hiding = setTimeout(() => {
      this.said = '';
    }, ms);
  }

  protected override draw() {
    const { said } = this;
    return html`<div role="status">${said ? html`<p>${said}</p>` : nothing}</div>`;
  }
}
