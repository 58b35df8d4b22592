import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { DeskView } from '../../shared/view/index.ts';
import { isLate } from '../../shared/view/index.ts';
import { deskWords, mendWords, sayDay } from '../../shared/words/index.ts';
import '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './service-standings.ts';

/** Whether there is something that a change of the day may put right. */
export const wantsMending = ({ services, overlong }: DeskView): boolean =>
  overlong.length > 0 || services.some(({ inHandS }) => isLate(inHandS));

/** The head of the desk: for which day, the time, and how every service stands. */
@customElement('desk-head')
export class DeskHead extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: 0 var(--edge) 0.1em;
        border-bottom: var(--heavy) solid var(--ink);
        font-weight: 700;
        line-height: 1.1;
      }
      .day {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 1em;
      }
      h1 {
        font-weight: 800;
      }
      a {
        color: var(--ink);
        text-decoration: none;
      }
      p {
        font-size: var(--small);
        font-weight: 600;
        color: var(--soft);
      }
      .mend {
        text-decoration: underline;
      }
      clock-time {
        margin-left: auto;
        font-size: var(--strong);
        font-weight: 800;
      }
      .mend + clock-time {
        margin-left: 0;
      }
      .mend {
        margin-left: auto;
      }
      @media (width < 600px) {
        .day {
          gap: 0 0.5em;
        }
        h1 {
          font-size: var(--small);
        }
        clock-time {
          font-size: var(--body);
          margin-left: auto;
        }
        /* All sections stand under it, and the one that mends is marked. */
        .mend {
          display: none;
        }
        .mend + clock-time {
          margin-left: auto;
        }
      }
    `,
  ];

  @property({ attribute: false }) view: DeskView | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  /** Whether what would mend the day is asked for elsewhere on the page. */
  @property({ type: Boolean }) mending = false;

  protected override draw() {
    const { view, say, now } = this;
    const words = deskWords[say.language];
    return html`<div class="day">
        <h1><a href="/">${words.desk}</a></h1>
        ${view ? html`<p>${words.forDay(sayDay(view.day, say), view.planVersion)}</p>` : nothing}
        ${view && wantsMending(view) && !this.mending ? this.#offer() : nothing}
        <clock-time .say=${say} .at=${now}></clock-time>
      </div>
      ${
        view
          ? html`<service-standings
              .say=${say}
              .standings=${view.standings}
              .now=${now}
            ></service-standings>`
          : nothing
      }`;
  }

  #offer() {
    return html`<a class="mend" href="#mend">${mendWords[this.say.language].ask}</a>`;
  }
}
