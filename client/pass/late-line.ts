import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import type { ServiceOutlook } from '../../shared/view/index.ts';
import { isOtherMinute } from '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import '../parts/service-line.ts';
import { base } from '../theme/index.ts';

/** How late a service will be, and behind that what holds it up. */
@customElement('late-line')
export class LateLine extends Part {
  static override styles = [
    base,
    css`
      /* Why leaves whole where it has no room: so high a head as a finger asks for has two rows. */
      :host {
        display: flex;
        flex-wrap: wrap;
        column-gap: 0.5em;
        max-height: calc(var(--heavy) + max(1.2em, round(down, var(--touch), 1.2em)));
        overflow: hidden;
        font-size: var(--small);
      }
      service-line {
        padding-bottom: var(--heavy);
      }
      :host([narrow]) {
        order: 1;
        flex-basis: 100%;
        max-height: none;
      }
    `,
  ];

  @property({ attribute: false }) outlook: ServiceOutlook | null = null;
  @property() why = '';
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;

  protected override draw() {
    const { say, outlook, now, why } = this;
    return html`<service-line .say=${say} .outlook=${outlook} .now=${now}></service-line>
      <span>${why}</span>`;
  }
}
