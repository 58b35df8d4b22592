import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Language } from '../../shared/words/index.ts';
import { ui } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

/**
 * Says over a wall that no tap is heard just now: it is being wiped. It lies over what is there, so
 * that nothing moves under a hand.
 */
@customElement('wipe-line')
export class WipeLine extends Part {
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

  @property() language: Language = 'en';
  @state() private isShown = false;

  #hiding: ReturnType<typeof setTimeout> | undefined;

  showFor(ms: number): void {
    this.isShown = true;
    clearTimeout(this.#hiding);
    this.#hiding = setTimeout(() => {
      this.isShown = false;
    }, ms);
  }

  protected override draw() {
    const { isWiped } = ui[this.language];
    return html`<div role="status">${this.isShown ? html`<p>${isWiped}</p>` : nothing}</div>`;
  }
}
