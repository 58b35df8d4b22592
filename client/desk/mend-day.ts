import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { CommandId, Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { MendShown, MendTaken, PlanAnswer } from '../../shared/protocol/index.ts';
import type { DeskView, MendChange, MendOffer, Refusal } from '../../shared/view/index.ts';
import {
  deskWords,
  mendWords,
  sayMendChange,
  sayMendLater,
  sayMendRung,
  sayMendServices,
  sayRefusal,
  textIn,
} from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { readSettings } from '../shell/settings.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { mendStyle } from './mend-day.css.ts';
import { needsOf, tooLong } from './mend-needs.ts';
import { type PlanDoors, planDoors } from './plan-doors.ts';
import './time-chart.ts';

type Doors = Pick<PlanDoors, 'mend' | 'takeMend'>;
type Proposed = NonNullable<MendShown['mend']>;

/**
 * What would mend a day that will be late: who would do what instead, where and when, from and to.
 * It is looked for when somebody asks, and done only when somebody takes it.
 */
@customElement('mend-day')
export class MendDay extends Part {
  static override styles = [base, formStyle, mendStyle];

  @property({ attribute: false }) view!: DeskView;
  @property({ type: Number }) now: Instant = instant(0);
  /** Left out: those of the hub that this page came from, with this device's own token. */
  @property({ attribute: false }) doors: Doors = planDoors({
    token: readSettings(new URLSearchParams()).token,
    language: () => this.say.language,
  });
  @state() private phase: 'still' | 'looking' | 'away' = 'still';
  @state() private proposed: Proposed | null = null;
  @state() private refusal: Refusal | null = null;
  /** What was taken: the hub's answer may come before the day that it made. */
  @state() private took: CommandId | null = null;

  private get said() {
    return mendWords[this.say.language];
  }

  protected override willUpdate(): void {
    if (this.took === null || !this.#isGone) return;
    this.proposed = null;
    this.phase = 'still';
  }

  /** The day was arranged anew since it was proposed. */
  get #isGone(): boolean {
    return this.proposed !== null && this.proposed.offer.basedOnSeq < this.view.arrangedSeq;
  }

  protected override draw() {
    const { phase, said, proposed, refusal, took, view } = this;
    const isGone = this.#isGone;
    // The sentence points to the line of news, and stands as long as that does.
    const isNews = took !== null && view.news?.command === took;
    const isOld = isGone && phase === 'still';
    return html`<ul class="needs">
        ${needsOf(view, this.say).map((line) => html`<li>${line}</li>`)}
      </ul>
      ${proposed ? nothing : html`<p class="soft">${said.about}</p>`}
      <div class="buttons">
        <button ?disabled=${phase === 'looking'} @click=${() => this.#look()}>${said.ask}</button>
        ${proposed ? this.#answers(proposed, isGone || phase === 'looking') : nothing}
      </div>
      ${proposed?.id ? this.#services(proposed.offer) : nothing}
      <div role="status">
        ${phase === 'looking' ? html`<p>${said.looking}</p>` : nothing}
        ${phase === 'away' ? html`<p>${said.away}</p>` : nothing}
        ${isNews ? html`<p class="strong">${said.taken}</p>` : nothing}
        ${refusal ? this.#refused(refusal) : nothing}
        ${proposed ? this.#inWords(proposed.offer) : nothing}
        ${isOld ? html`<p class="strong">${said.goneOn}</p>` : nothing}
      </div>
      ${proposed?.id ? this.#offer(proposed.offer) : nothing}
      ${view.overlong.length > 0 ? tooLong(view, this.say) : nothing}`;
  }

  /** Where a PIN is asked for, with the way to where it is typed. */
  #refused(refusal: Refusal) {
    const { say } = this;
    const { who } = deskWords[say.language].sections;
    return html`<p class="strong">
      ${sayRefusal(refusal, say)}
      ${refusal.rule === 'needs-pin' ? html`<a href="#who">${who}</a>` : nothing}
    </p>`;
  }

  #answers({ id }: Proposed, isShut: boolean) {
    if (id === null) return nothing;
    return html`<button class="takes" ?disabled=${isShut} @click=${() => this.#take(id)}>
        ${this.said.take}
      </button>
      <button class="leaves" @click=${() => this.#leave()}>${this.said.leave}</button>`;
  }

  #inWords(offer: MendOffer) {
    const lines = [sayMendRung(offer, this.say), ...sayMendLater(offer, this.say)];
    return lines.map((line) => html`<p class="strong">${line}</p>`);
  }

  #services(offer: MendOffer) {
    const { said, say } = this;
    return html`<ul class="rows services">
      <li>
        <span></span><span class="soft">${said.asItIs}</span><span></span>
        <span class="soft">${said.doneSo}</span>
      </li>
      ${sayMendServices(offer, say).map(
        ({ name, before, after }) => html`<li>
          <span>${name}</span><span>${before}</span><span>→</span>
          <span class=${before === after ? '' : 'strong'}>${after}</span>
        </li>`,
      )}
    </ul>`;
  }

  #offer(offer: MendOffer) {
    const { said } = this;
    const people = offer.changes.filter(({ hands, slot, place }) => hands || slot || place);
    const times = offer.changes.filter((each) => !people.includes(each));
    return html`${people.length > 0 ? html`<h2>${said.people}</h2>${this.#rows(people)}` : nothing}
      ${times.length > 0 ? this.#times(times, people.length === 0) : nothing}
      ${offer.others > 0 ? html`<p class="soft">${said.others(offer.others)}</p>` : nothing}
      ${offer.wouldBe.length > 0 ? this.#chart(offer) : nothing}`;
  }

  #chart({ wouldBe }: MendOffer) {
    const { said, view, say, now } = this;
    return html`<h2>${said.onChart}</h2>
      <time-chart .view=${view} .wouldBe=${wouldBe} .say=${say} .now=${now}></time-chart>`;
  }

  #times(times: MendOffer['changes'], isOpen: boolean) {
    return html`<details ?open=${isOpen}>
      <summary>${this.said.times(times.length)}</summary>
      ${this.#rows(times)}
    </details>`;
  }

  #rows(changes: MendOffer['changes']) {
    return html`<ul class="rows changes">
      ${repeat(
        changes,
        ({ task }) => task,
        (change) => this.#row(change),
      )}
    </ul>`;
  }

  #row(change: MendChange) {
    const { say } = this;
    const { who, where, when } = sayMendChange(change, say);
    return html`<li>
      <span class="what">
        ${textIn(change.title, say)} <span class="soft">${textIn(change.batch, say)}</span>
      </span>
      <span>${who}</span><span>${where}</span><span>${when}</span>
    </li>`;
  }

  async #look(): Promise<void> {
    this.#leave();
    this.phase = 'looking';
    await this.#hear(this.doors.mend(), ({ mend }) => {
      this.proposed = mend;
      this.phase = 'still';
    });
  }

  async #take(id: string): Promise<void> {
    this.phase = 'looking';
    await this.#hear(this.doors.takeMend(id), ({ command }) => {
      this.took = command;
    });
  }

  #leave(): void {
    this.took = null;
    this.proposed = null;
    this.refusal = null;
    this.phase = 'still';
  }

  async #hear<Found extends MendShown | MendTaken>(
    asked: Promise<PlanAnswer<Found>>,
    found: (answer: Found) => void,
  ): Promise<void> {
    try {
      const answer = await asked;
      if (answer.ok) found(answer);
      else {
        this.refusal = answer.refusal;
        this.phase = 'still';
      }
    } catch {
      this.phase = 'away';
    }
  }
}
