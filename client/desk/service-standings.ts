import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { ServiceStanding } from '../../shared/view/index.ts';
import { deskWords, sayHeldBy, sayStanding } from '../../shared/words/index.ts';
import { isOtherMinute } from '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './spread-mark.ts';

/**
 * How each service stands, a line for each: what is likely, between what it may come out, and where
 * there is room what is left if no cook runs long. Late is heavier, over a stroke of brick.
 */
@customElement('service-standings')
export class ServiceStandings extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        font-size: var(--small);
        line-height: 1.12;
      }
      ul {
        display: grid;
        grid-template-columns: repeat(3, auto) 1fr;
        justify-content: start;
        column-gap: 1em;
      }
      li {
        display: grid;
        grid-column: 1 / -1;
        grid-template-columns: subgrid;
        align-items: baseline;
        color: var(--soft);
        font-weight: 600;
      }
      .service,
      .stands {
        color: var(--ink);
        font-weight: 700;
      }
      .stands {
        /* What is alone in its line may be as long as it is. */
        grid-column: 2 / -1;
      }
      .doubted .stands {
        grid-column: 2;
      }
      .late {
        font-weight: 800;
        text-decoration: underline var(--heavy) var(--brick);
        text-decoration-skip-ink: none;
        text-underline-offset: 0.12em;
      }
      .why {
        margin-right: 0.6em;
        color: var(--ink);
        font-weight: 700;
      }
      spread-mark,
      .planned {
        display: none;
      }
      /* Words beside what is as long as that would stand one under the other. */
      .between + .beside {
        grid-column: 2 / -1;
      }
      @media (width >= 75rem) {
        ul {
          grid-template-columns: repeat(4, auto) 1fr;
        }
        spread-mark {
          display: block;
        }
        .between + .beside {
          grid-column: auto;
        }
      }
      @media (width >= 112rem) {
        :host {
          font-size: var(--body);
        }
        .planned {
          display: inline;
        }
      }
      @media (width < 600px) {
        li {
          display: flex;
          flex-wrap: wrap;
          gap: 0 0.6em;
        }
        .between {
          flex-basis: 100%;
        }
      }
    `,
  ];

  @property({ attribute: false }) standings: readonly ServiceStanding[] = [];
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant = instant(0);

  protected override draw() {
    const { say, now } = this;
    const lines = this.standings.flatMap((standing) => {
      const said = sayStanding(standing, now, say);
      const { heldBy, spread } = standing;
      const why = heldBy ? sayHeldBy(heldBy, now, say)[0] : null;
      return said ? [{ ...said, why, spread }] : [];
    });
    if (lines.length === 0) return html`<p>${deskWords[say.language].allOver}</p>`;
    return html`<ul>
      ${lines.map(({ service, stands, isLate, spread, between, planned, why }) => {
        return html`<li class=${spread ? 'doubted' : ''}>
          <span class="service">${service}</span>
          <span class="stands"
            ><span class=${isLate ? 'late' : ''}>${stands}</span>${
              why && !spread ? html` <span class="why">${why}</span>` : nothing
            }</span
          >
          ${spread ? html`<spread-mark .say=${say} .spread=${spread}></spread-mark>` : nothing}
          ${between ? html`<span class="between">${between}</span>` : nothing}
          ${
            planned || (why && spread)
              ? html`<span class="beside"
                  >${why ? html`<span class="why">${why}</span>` : nothing}
                  ${planned ? html`<span class="planned">${planned}</span>` : nothing}</span
                >`
              : nothing
          }
        </li>`;
      })}
    </ul>`;
  }
}
