import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { wallTime } from '../../shared/kernel/index.ts';
import { type LogKind, type LogLine, logKind } from '../../shared/view/index.ts';
import { clockTime, deskWords, logWords, sayDay, sayLogged } from '../../shared/words/index.ts';
import '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';

const KINDS: readonly LogKind[] = ['work', 'readings', 'food', 'house'];

const BY = 'by ';
/** What is looked for: all there is, what one person did, or one kind of thing. */
type Wanted = 'all' | LogKind | `${typeof BY}${string}`;

/** What has happened today, newest first, day by day, with who did it and on which screen. */
@customElement('day-log')
export class DayLog extends Part {
  static override styles = [
    base,
    formStyle,
    css`
      :host {
        display: block;
        --touch: 44px;
        padding: var(--gap) var(--edge) var(--edge);
      }
      .top {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 1.2em;
        color: var(--soft);
      }
      h2 {
        padding-top: 0.4em;
        font-weight: 800;
        border-bottom: var(--line) solid var(--ink);
      }
      li {
        display: grid;
        grid-template-columns: 5em minmax(0, 40em) minmax(9em, 1fr);
        align-items: baseline;
        gap: 0 0.6em;
        padding: 0.2em 0;
        border-bottom: var(--hair) solid var(--pencil);
        line-height: 1.25;
      }
      clock-time {
        font-weight: 700;
      }
      .said {
        text-wrap: pretty;
      }
      .by {
        font-size: var(--small);
        color: var(--soft);
      }
      @media (width < 600px) {
        li {
          grid-template-columns: auto minmax(0, 1fr);
        }
        clock-time {
          min-width: 4.6em;
          font-size: var(--small);
        }
        .by {
          grid-column: 2;
        }
      }
    `,
  ];

  @property({ attribute: false }) lines: readonly LogLine[] = [];
  @state() private wanted: Wanted = 'all';

  protected override draw() {
    const { lines, say } = this;
    if (lines.length === 0) return html`<p>${logWords[say.language].nothing}</p>`;
    const shown = lines.filter((line) => this.#isWanted(line));
    return html`<div class="top">
        <span>${deskWords[say.language].log.newestFirst}</span> ${this.#choice()}
      </div>
      ${daysOf(shown, say.zone).map(
        ([day, its]) =>
          html`<h2>${sayDay(day, say)}</h2>
            <ol>
              ${repeat(
                its,
                ({ seq }) => seq,
                (line) => this.#line(line),
              )}
            </ol>`,
      )}
      ${shown.length === 0 ? html`<p>${deskWords[say.language].log.none}</p>` : nothing}`;
  }

  #isWanted({ person, said }: LogLine): boolean {
    const { wanted } = this;
    if (wanted === 'all') return true;
    return logKind(said) === wanted || `${BY}${person}` === wanted;
  }

  #choice() {
    const { kinds, all, look, people } = deskWords[this.say.language].log;
    const { lines, wanted } = this;
    // Who is looked for stays to be seen, also when all of theirs is older than what is shown.
    const sought = wanted.startsWith(BY) ? wanted.slice(BY.length) : null;
    const those = [...lines.map(({ person }) => person), sought];
    const names = [...new Set(those.flatMap((name) => name ?? []))].sort();
    const choose = ({ target }: Event) => {
      this.wanted = (target as HTMLSelectElement).value as Wanted;
    };
    return html`<label>
      ${look}
      <select @change=${choose}>
        <option value="all">${all}</option>
        ${KINDS.map((kind) => html`<option value=${kind}>${kinds[kind]}</option>`)}
        <optgroup label=${people}>
          ${repeat(
            names,
            (name) => name,
            (name) => html`<option value=${`${BY}${name}`}>${name}</option>`,
          )}
        </optgroup>
      </select>
    </label>`;
  }

  #line({ at, sentAt, person, screen, said }: LogLine) {
    const { say } = this;
    const late = sentAt === null ? null : logWords[say.language].sentAt(clockTime(sentAt, say));
    return html`<li>
      <clock-time .say=${say} .at=${at}></clock-time>
      <span class="said">${sayLogged(said, say)}</span>
      <span class="by">${[person, screen, late].filter(Boolean).join(' · ')}</span>
    </li>`;
  }
}

/** Lines of one day of the kitchen's clock under another: a night's work is of the day before. */
function daysOf(lines: readonly LogLine[], zone: string): [day: string, LogLine[]][] {
  const days: [string, LogLine[]][] = [];
  for (const line of lines) {
    const { day } = wallTime(line.at, zone);
    const last = days.at(-1);
    if (last?.[0] === day) last[1].push(line);
    else days.push([day, [line]]);
  }
  return days;
}
