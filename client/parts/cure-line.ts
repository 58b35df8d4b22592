import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CureView } from '../../shared/view/index.ts';
import { scaleWeight, textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

/** What two people weigh of a cure, or have. Tells `show` with `cure` where it is to be weighed. */
@customElement('cure-line')
export class CureLine extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        font-size: var(--small);
      }
      button {
        font-weight: 800;
        text-align: left;
        border: var(--line) solid var(--ink);
        padding: 0 0.4em;
      }
    `,
  ];

  @property({ attribute: false }) cure: CureView | null = null;

  protected override draw() {
    const { cure, say, words } = this;
    if (!cure) return nothing;
    const { weighed } = cure;
    if (weighed) {
      const [first, second] = [weighed.first, weighed.second];
      return html`<p>${words.cure.weighed(scaleWeight(weighed.weightKg, say), first, second)}</p>`;
    }
    const asked = words.cure.asked(scaleWeight(cure.weightKg, say), textIn(cure.mix, say));
    return html`<button @click=${() => this.tell('show', 'cure')}>${asked}</button>`;
  }
}
