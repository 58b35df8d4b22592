import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import type { ServiceOutlook } from '../../shared/view/index.ts';
import { sayInHand, wholeMinutes } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { isOtherMinute } from './clock-time.ts';
import { Part } from './part.ts';

/** A service's minutes in hand; short of them it is heavier, over a stroke of brick. */
@customElement('service-line')
export class ServiceLine extends Part {
  static override styles = [
    base,
    css`
      .short {
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--brick);
      }
    `,
  ];

  @property({ attribute: false }) outlook: ServiceOutlook | null = null;
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant | null = null;

  protected override draw() {
    const { outlook, say, now } = this;
    if (!outlook) return null;
    const isShort = wholeMinutes(outlook.inHandS) < 0;
    return html`<span class=${isShort ? 'short' : ''}>${sayInHand(outlook, say, now)}</span>`;
  }
}
