import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Instant, kilograms } from '../../shared/kernel/index.ts';
import type { LotShare, LotShown, LotTraced } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import { recordDeskWords, sayDay, sayRefusal, textIn, weight } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import type { RecordDoors } from './record-doors.ts';
import { recordStyle } from './record-style.ts';

/**
 * A lot forward into all that it went to, and from each of these back to all that was in it; and a
 * drill of that against the clock. Tells `found` with what is to be written down of a drill.
 */
@customElement('record-trace')
export class RecordTrace extends Part {
  static override styles = [
    base,
    recordStyle,
    css`
      th {
        padding-top: 0.6em;
        font-size: var(--small);
        font-weight: 800;
      }
      /* A number is not broken where its parts are joined. */
      .share {
        white-space: nowrap;
      }
    `,
  ];

  @property({ attribute: false }) doors!: RecordDoors;
  @property({ attribute: false }) lots: readonly LotShown[] = [];
  @property({ attribute: false }) now!: () => Instant;
  /** Traced at once, as by a label's code. */
  @property() lot: string | null = null;
  @state() private found: LotTraced | null = null;
  @state() private wrong: Refusal | 'away' | null = null;
  @state() private drillSince: Instant | null = null;
  @state() private told = false;

  #ticking: ReturnType<typeof setInterval> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.#ticking);
  }

  protected override draw() {
    const { say, found, wrong } = this;
    const words = recordDeskWords[say.language];
    return html`<h2>${words.trace}</h2>
      <form @submit=${this.#trace}>
        <label for="lot">
          <span class="called">${words.whichLot}</span>
          <input
            id="lot"
            name="lot"
            list="lots"
            size="14"
            maxlength="40"
            required
            autocomplete="off"
            .value=${this.lot ?? ''}
          />
        </label>
        <datalist id="lots">
          ${this.lots.map(
            ({ id, name }) => html`<option value=${id}>${textIn(name, say)}</option>`,
          )}
        </datalist>
        <button class="takes">${words.trace}</button>
        ${this.#drill()}
      </form>
      ${wrong ? html`<p role="alert">${this.#why(wrong)}</p>` : nothing}
      ${found ? this.#both(found) : nothing}`;
  }

  #drill() {
    const words = recordDeskWords[this.say.language];
    if (this.drillSince === null) {
      return html`<button type="button" @click=${this.#begin}>${words.drill}</button>
        ${this.told ? html`<span class="soft" role="status">${words.drillTold}</span>` : nothing}`;
    }
    const time = lasted(this.now() - this.drillSince);
    return html`<span>${words.drillGoes(time)}</span>
      <button type="button" ?disabled=${this.found === null} @click=${this.#end}>
        ${words.drillEnds}
      </button>`;
  }

  #both({ trace, back, fed }: LotTraced) {
    const { say } = this;
    const words = recordDeskWords[say.language];
    const row = (where: string, kg: Parameters<typeof weight>[0], of: unknown = null) =>
      html`<tr>
        <td>${where} ${of ? html`<p class="soft">${of}</p>` : nothing}</td>
        <td class="figure">${weight(kg, say)}</td>
      </tr>`;
    const on = (day: string, what: string) => `${sayDay(day, say)} · ${what}`;
    const gone = (
      { day, dishName, mayHaveFed }: LotTraced['trace']['kept'][number],
      how: string,
    ) => {
      const may = mayHaveFed.map((each) => on(each.day, textIn(each.name, say))).join(', ');
      const said = may === '' ? '' : ` (${words.mayHaveFed}: ${may})`;
      return `${on(day, textIn(dishName, say))}: ${how}${said}`;
    };
    const { lot, batches, services, kept, thrown, tubs, lossKg, leftKg, sentBackKg } = trace;
    const plates = together(services);
    const trim = tubs.filter(({ weightKg }) => weightKg > 0.0005);
    const heading = (said: string, of: readonly unknown[]) =>
      of.length === 0 ? nothing : html`<tr><th colspan="2" scope="rowgroup">${said}</th></tr>`;
    return html`<table>
      <caption class="unseen">${words.trace}: ${lot.id}</caption>
      <tbody>
        ${heading(words.forward, batches)}
        ${batches.map(({ day, batch, name, weightKg }) => {
          const its = back.find((each) => each.day === day && each.batch === batch);
          const of = its ? html`${words.madeOf} ${this.#named(its.lots)}` : null;
          return row(on(day, textIn(name, say)), weightKg, of);
        })}
      </tbody>
      <tbody>
        ${heading(words.served, plates)}
        ${plates.map(({ day, service, name, dishName, weightKg }, i) => {
          // All that a service was fed from stands once, under the last of its dishes.
          const next = plates[i + 1];
          const isLast = next?.day !== day || next.service !== service;
          const its = fed.find((each) => each.day === day && each.service === service);
          const where = on(day, `${textIn(name, say)}, ${textIn(dishName, say)}`);
          const of = its && isLast ? html`${words.allFrom} ${this.#named(its.lots)}` : null;
          return row(where, weightKg, of);
        })}
        ${kept.map((each) => row(gone(each, words.kept), each.weightKg))}
        ${thrown.map((each) => row(gone(each, words.thrown), each.weightKg))}
      </tbody>
      <tbody>
        ${heading(words.trim, trim)}
        ${trim.map(({ day, name, weightKg, isWeighed }) =>
          row(on(day, textIn(name, say)), weightKg, isWeighed ? words.weighed : words.reckoned),
        )}
      </tbody>
      <tbody>
        ${row(words.lost, lossKg)} ${row(words.inCooler, leftKg)}
        ${sentBackKg > 0 ? row(words.sentBack, sentBackKg) : nothing}
        <tr class="sum">
          <td>${words.whole}: ${lot.supplier}${lot.code ? ` ${lot.code}` : ''}</td>
          <td class="figure">${weight(lot.weightKg, say)}</td>
        </tr>
      </tbody>
    </table>`;
  }

  #named(lots: readonly LotShare[]) {
    const { nobodyKnows } = recordDeskWords[this.say.language];
    return lots.map(({ lot, weightKg }, i) => {
      const share = `${lot ?? nobodyKnows} ${weight(weightKg, this.say)}`;
      return html`<span class="share">${share}${i < lots.length - 1 ? ',' : ''}</span> `;
    });
  }

  #why(wrong: Refusal | 'away'): string {
    return wrong === 'away'
      ? recordDeskWords[this.say.language].hubAway
      : sayRefusal(wrong, this.say);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('lot') && this.lot !== null) void this.#find(this.lot);
  }

  readonly #trace = (event: SubmitEvent): void => {
    event.preventDefault();
    const said = new FormData(event.target as HTMLFormElement);
    void this.#find(String(said.get('lot') ?? '').trim());
  };

  async #find(lot: string): Promise<void> {
    try {
      const answer = await this.doors.trace(lot);
      this.wrong = answer.ok ? null : answer.refusal;
      this.found = answer.ok ? answer : null;
    } catch {
      this.wrong = 'away';
    }
  }

  readonly #begin = (): void => {
    this.drillSince = this.now();
    this.told = false;
    this.found = null;
    this.#ticking = setInterval(() => this.requestUpdate(), 1000);
  };

  readonly #end = (): void => {
    const { drillSince, found } = this;
    clearInterval(this.#ticking);
    if (drillSince === null || found === null) return;
    const time = lasted(this.now() - drillSince);
    this.tell('found', recordDeskWords[this.say.language].drillNote(found.trace.lot.id, time));
    this.drillSince = null;
    this.told = true;
  };
}

type Plate = LotTraced['trace']['services'][number];

/** A dish of a service once, of however many batches it was. */
function together(services: readonly Plate[]): Plate[] {
  const plates = new Map<string, Plate>();
  for (const each of services) {
    const key = `${each.day} ${each.service} ${each.dish}`;
    const sumKg = (plates.get(key)?.weightKg ?? 0) + each.weightKg;
    plates.set(key, { ...each, weightKg: kilograms(sumKg) });
  }
  return [...plates.values()];
}

/** Minutes and seconds. @example lasted(102_000) //=> '1:42' */
function lasted(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
