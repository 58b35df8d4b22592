import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { DeskView, ServiceOutlook } from '../../shared/view/index.ts';
import { deskWords, mendWords, sayDay } from '../../shared/words/index.ts';
import '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import '../parts/service-line.ts';
import './spread-mark.ts';
import { base } from '../theme/index.ts';

/** A service that will be later than this is offered to be mended. */
const LATE_S = 120;

const isInNeed = ({ services, overlong }: DeskView) =>
  overlong.length > 0 || services.some(({ inHandS }) => inHandS < -LATE_S);

/** The head of the desk: for which day, how every service stands, and the time. */
@customElement('desk-head')
export class DeskHead extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 1.2em;
        padding: 0.25em var(--edge);
        border-bottom: var(--heavy) solid var(--ink);
        font-weight: 700;
        line-height: 1.25;
      }
      h1 {
        font-weight: 800;
      }
      a {
        color: var(--ink);
        text-decoration: none;
      }
      .day {
        font-size: var(--small);
        font-weight: 600;
        color: var(--soft);
        white-space: nowrap;
      }
      .services {
        /* No wider than it must be: the title and the clock stay beside it. */
        flex: 1 1 20em;
        display: flex;
        flex-wrap: wrap;
        gap: 0 1.2em;
      }
      .service {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 0.6em;
      }
      @media (width < 68em) {
        .day {
          display: none;
        }
      }
      .mend {
        text-decoration: underline;
      }
      clock-time {
        font-size: var(--strong);
        font-weight: 800;
      }
    `,
  ];

  @property({ attribute: false }) view: DeskView | null = null;
  @property({ type: Number }) now: Instant = instant(0);

  protected override draw() {
    const { view, say } = this;
    const words = deskWords[say.language];
    return html`<h1><a href="/">${words.desk}</a></h1>
      <span class="day">
        ${view ? words.forDay(sayDay(view.day, say), view.planVersion) : null}
      </span>
      <span class="services">
        ${view?.services.map((outlook) => this.#service(outlook, view))}
        ${view?.services.length === 0 ? words.allReady : null}
      </span>
      ${view && isInNeed(view) ? this.#offer() : null}
      <clock-time .say=${say} .at=${this.now}></clock-time>`;
  }

  #service(outlook: ServiceOutlook, { spreads }: DeskView) {
    const { say } = this;
    const spread = spreads.find(({ service }) => service === outlook.id);
    return html`<span class="service">
      <service-line .say=${say} .outlook=${outlook} .now=${this.now}></service-line>
      ${spread ? html`<spread-mark .say=${say} .spread=${spread}></spread-mark>` : null}
    </span>`;
  }

  #offer() {
    return html`<a class="mend" href="#mend">${mendWords[this.say.language].ask}</a>`;
  }
}
