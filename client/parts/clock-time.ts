import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import { clockTime } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

const HALF_DAY_MS = 12 * 3_600_000;

const minuteOf = (at: Instant) => Math.floor(at / 60_000);

/** Whether it reads otherwise: no clock of a kitchen is off from UTC by part of a minute. */
const isOtherMinute = (at: Instant, before: Instant | undefined) =>
  before === undefined || minuteOf(at) !== minuteOf(before);

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
      /* Smaller than the time, and never too small for the wall. */
      small {
        font-size: max(0.6em, var(--small));
      }
    `,
  ];

  @property({ type: Number, hasChanged: isOtherMinute }) at: Instant = instant(0);
  /** A time right over it that it follows within half a day: which half is known from there. */
  @property({ type: Number }) follows: Instant | null = null;

  protected override draw() {
    const [time, half] = clockTime(this.at, this.say).split(' ');
    const isSaid = this.follows !== null && this.at - this.follows < HALF_DAY_MS;
    return html`<time>${time}${half && !isSaid ? html`<small> ${half}</small>` : null}</time>`;
  }
}
