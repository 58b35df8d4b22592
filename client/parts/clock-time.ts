import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import { clockTime } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

/**
 * A time on the kitchen's wall clock; of a 12-hour clock the half of the day stands small behind
 * it.
 */
@customElement('clock-time')
export class ClockTime extends Part {
  static override styles = [
    base,
    css`
      :host {
        white-space: nowrap;
      }
      small {
        font-size: 0.6em;
      }
    `,
  ];

  @property({ type: Number }) at: Instant = instant(0);

  protected override draw() {
    const [time, half] = clockTime(this.at, this.say).split(' ');
    return html`<time>${time}${half ? html`<small> ${half}</small>` : null}</time>`;
  }
}
