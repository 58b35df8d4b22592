import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import { clockTime, HALF_DAY_MS, sayDayAhead } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

const minuteOf = (at: Instant) => Math.floor(at / 60_000);

/** Whether it reads otherwise: no clock of a kitchen is off from UTC by part of a minute. */
export const isOtherMinute = (at: Instant | null, before: Instant | null | undefined) =>
  at === null || before == null ? at !== before : minuteOf(at) !== minuteOf(before);

/**
 * A time on the kitchen's wall clock; of a 12-hour clock the half of the day stands small behind
 * it, and before one of another day, more than half a day off, which day that is.
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
  /** A time right over it: on the same half of the day, that is known from there. */
  @property({ type: Number }) follows: Instant | null = null;
  /** Where it may be a time of another day: what it is now. */
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant | null = null;

  protected override draw() {
    const [time, half] = clockTime(this.at, this.say).split(' ');
    const { follows } = this;
    const isNear = follows !== null && this.at - follows < HALF_DAY_MS;
    const isSaid = isNear && clockTime(follows, this.say).endsWith(`${half}`);
    const day = this.now === null ? '' : sayDayAhead(this.at, this.now, this.say);
    const before = day ? html`<small>${day} </small>` : null;
    const behind = half && !isSaid ? html`<small> ${half}</small>` : null;
    return html`<time>${before}${time}${behind}</time>`;
  }
}
