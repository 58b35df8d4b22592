import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { CheckRow, RecordShown, SheetAsk } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import {
  clockTime,
  recordDeskWords,
  sayAction,
  sayCheckKind,
  sayDay,
  sayRefusal,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './day-field.ts';
import { keepFile } from './keep-file.ts';
import type { RecordDoors } from './record-doors.ts';
import { recordStyle } from './record-style.ts';

/** Days above these are asked for by their dates. */
const MOST_DAYS = 14;

/** The days on record: who closed each, how it was signed, and what can be taken away of them. */
@customElement('record-days')
export class RecordDays extends Part {
  static override styles = [base, recordStyle];

  @property({ attribute: false }) doors!: RecordDoors;
  @property({ attribute: false }) shown!: RecordShown;
  @state() private wrong: Refusal | 'away' | null = null;
  @state() private picked: string | null = null;
  @state() private checks: readonly CheckRow[] = [];
  /** What was picked; the last day on record where nothing was. */
  @state() private ends: { readonly from?: string; readonly to?: string } = {};

  protected override draw() {
    const { say, shown, wrong } = this;
    const words = recordDeskWords[say.language];
    const { days, key, chain } = shown;
    const ends = { min: days[0]?.day ?? '', max: days.at(-1)?.day ?? '' };
    return html`<h2>${words.days}</h2>
      <form @submit=${this.#take}>
        ${this.#day('from', words.from, ends)} ${this.#day('to', words.to, ends)}
        <button class="takes" value="html">${words.sheet}</button>
        <button value="csv">${words.table}</button>
        <button value="json">${words.file}</button>
        <button value="labels">${words.labels}</button>
      </form>
      <p class="soft">${words.fileIs}</p>
      ${wrong ? html`<p role="alert">${this.#why(wrong)}</p>` : nothing}
      <ul>
        ${[...days]
          .reverse()
          .slice(0, MOST_DAYS)
          .map((day) => this.#row(day))}
      </ul>
      <p class="soft">${words.chain[chain]} ${words.key}: ${key}</p>`;
  }

  #day(end: 'from' | 'to', label: string, { min, max }: { min: string; max: string }) {
    return html`<day-field
      over
      .say=${this.say}
      .label=${label}
      .day=${this.ends[end] ?? max}
      .min=${min}
      .max=${max}
      @to-day=${({ detail }: CustomEvent<string>) => {
        this.ends = { ...this.ends, [end]: detail };
      }}
    ></day-field>`;
  }

  #row({ day, closed, head }: RecordShown['days'][number]) {
    const { say } = this;
    const words = recordDeskWords[say.language];
    const ended = closed
      ? words.closedBy(closed.by ?? '–', clockTime(closed.at, say))
      : head
        ? words.notClosed
        : words.runs;
    return html`<li>
        <span class="name">${sayDay(day, say)}</span>
        <span>${ended}</span>
        <span class="soft">${head?.slice(0, 12) ?? ''}</span>
        <button aria-expanded=${this.picked === day} @click=${() => void this.#look(day)}>
          ${words.checks}
        </button>
      </li>
      ${this.picked === day ? html`<li>${this.#checked()}</li>` : nothing}`;
  }

  /** What was done about a check stands under it. */
  #checked() {
    const { say, checks } = this;
    if (checks.length === 0) return html`<p>${recordDeskWords[say.language].noChecks}</p>`;
    return html`<table>
      <tbody>
        ${checks.map(
          ({ at, check, what, tempC, action, by }) => html`<tr>
            <td>${clockTime(at, say)}</td>
            <td>
              ${action === null ? sayCheckKind(check, say) : `↳ ${sayAction(action, say)}`},
              ${textIn(what, say)}
            </td>
            <td class="figure">${tempC === null ? '' : temperature(tempC, say)}</td>
            <td>${by ?? ''}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  #why(wrong: Refusal | 'away'): string {
    return wrong === 'away'
      ? recordDeskWords[this.say.language].hubAway
      : sayRefusal(wrong, this.say);
  }

  async #look(day: string): Promise<void> {
    if (this.picked === day) {
      this.picked = null;
      return;
    }
    await this.#asking(async () => {
      const answer = await this.doors.day(day);
      this.wrong = answer.ok ? null : answer.refusal;
      this.checks = answer.ok ? answer.evidence.checks : [];
      this.picked = answer.ok ? day : null;
    });
  }

  readonly #take = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    const as = ((event.submitter as HTMLButtonElement | null)?.value || 'html') as SheetAsk['as'];
    const last = this.shown.days.at(-1)?.day ?? '';
    const { from = last, to = last } = this.ends;
    const { language } = this.say;
    await this.#asking(async () => {
      const asked = { as, from, to, language, at: location.origin };
      const answer = await this.doors.sheet(asked);
      this.wrong = answer.ok ? null : answer.refusal;
      if (answer.ok) keepFile(answer);
    });
  };

  async #asking(run: () => Promise<void>): Promise<void> {
    try {
      await run();
    } catch {
      this.wrong = 'away';
    }
  }
}
