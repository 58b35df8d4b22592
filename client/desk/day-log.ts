import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { LogLine } from '../../shared/view/index.ts';
import { clockTime, logWords, sayLogged } from '../../shared/words/index.ts';
import '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

/** Kept later than this after it happened, the screen was alone, and the line says so. */
const ALONE_MS = 60_000;

/** What has happened today, newest first, with who did it and on which screen. */
@customElement('day-log')
export class DayLog extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: 0 var(--edge) var(--edge);
      }
      li {
        display: grid;
        grid-template-columns: 5em minmax(0, 1fr) auto;
        align-items: baseline;
        gap: 0 0.6em;
        padding: 0.2em 0;
        border-bottom: var(--hair) solid var(--pencil);
        line-height: 1.25;
      }
      clock-time {
        font-weight: 700;
      }
      .by {
        font-size: var(--small);
        color: var(--soft);
        text-align: right;
      }
      @media (width < 600px) {
        .by {
          grid-column: 2;
          text-align: left;
        }
      }
    `,
  ];

  @property({ attribute: false }) lines: readonly LogLine[] = [];

  protected override draw() {
    if (this.lines.length === 0) return html`<p>${logWords[this.say.language].nothing}</p>`;
    return html`<ol>
      ${repeat(
        this.lines,
        ({ seq }) => seq,
        (line) => this.#line(line),
      )}
    </ol>`;
  }

  #line({ at, keptAt, person, screen, said }: LogLine) {
    const { say } = this;
    const late =
      keptAt - at > ALONE_MS ? logWords[say.language].keptAt(clockTime(keptAt, say)) : null;
    return html`<li>
      <clock-time .say=${say} .at=${at}></clock-time>
      <span>${sayLogged(said, say)}</span>
      <span class="by">${[person, screen, late].filter(Boolean).join(' · ')}</span>
    </li>`;
  }
}
