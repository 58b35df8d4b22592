import { html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Instant, SlotId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { Mark, PitRule, SmokerDrawing } from '../../shared/view/index.ts';
import {
  clockRange,
  clockTime,
  fireWords,
  pitWords,
  sinceClock,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { fireOrder } from './fire-order.ts';
import { onceAFrame } from './ink.ts';
import { Part } from './part.ts';
import { agoWhereOld, kindsOf } from './rack-kinds.ts';
import type { Picked, RackLane } from './rack-lane.ts';
import './rack-lane.ts';
import './rule-hours.ts';
import { smokerCutawayStyles } from './smoker-cutaway.css.ts';
import { styled } from './styled.ts';

/** Less than this in an hour is the smoker's own breathing, not a trend. */
const TREND_C_PER_HOUR = 8;
/** One smoker cut open: its fire, its racks from top to bottom, where the heat comes from. */
@customElement('smoker-cutaway')
export class SmokerCutaway extends Part {
  static override styles = [base, smokerCutawayStyles];

  @property({ attribute: false }) smoker: SmokerDrawing | null = null;
  @property({ type: Number }) laneM = 1;
  @property({ attribute: false }) rule: PitRule | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ attribute: false }) marks: ReadonlyMap<string, Mark> = new Map();
  @property({ attribute: false }) picked: Picked | null = null;
  @property({ attribute: false }) askedSlot: SlotId | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;

  /** Once all is laid out: its room stays, so that nothing moves by it. */
  readonly #seeHours = onceAFrame(() => {
    const lanes = [...this.renderRoot.querySelectorAll<RackLane>('rack-lane')];
    this.toggleAttribute('bare', !lanes.some((lane) => lane.showsHours));
  });

  protected override updated(): void {
    this.#seeHours();
  }

  protected override draw() {
    const { smoker } = this;
    if (!smoker) return nothing;
    return html`<button class="title" @click=${() => this.tell('air', smoker.id)}>
        <h2>${textIn(smoker.name, this.say)}</h2>
        <span class="air">${this.#air(smoker)}</span>
        <span class="then"></span>
        ${smoker.spell ? this.#since(smoker.spell) : this.#heat(smoker)}
        <span class="fire">${this.#fire(smoker)}</span>
        ${this.#order(smoker)}
      </button>
      <div class="racks" ${styled({ '--rows': this.#rows(smoker) })}>
        ${repeat(
          smoker.racks,
          ({ slot }) => slot.id,
          (rack) => html`<rack-lane
            .say=${this.say}
            .rack=${rack}
            .laneM=${this.laneM}
            .rule=${this.rule}
            .now=${this.now}
            .marks=${this.marks}
            .picked=${this.picked}
            ?asked=${this.askedSlot === rack.slot.id}
            ?narrow=${this.narrow}
          ></rack-lane>`,
        )}
      </div>
      ${this.#hours(smoker)}`;
  }

  /** Each rack has of the height what its words take, an empty one no more. */
  #rows({ racks }: SmokerDrawing): string {
    const rows = racks.map(({ loads }) => {
      const kinds = kindsOf(loads, this.now, this.say).length;
      if (loads.length === 0) return 'max-content';
      return `minmax(min-content, ${kinds === 0 ? 2 : 1 + 3 * kinds}fr)`;
    });
    return rows.join(' ');
  }

  /** Which hours the rules under the racks hold. */
  #hours({ racks }: SmokerDrawing) {
    const { rule, say } = this;
    if (!rule || racks.every(({ loads }) => loads.every(({ here }) => !here))) return nothing;
    return html`<rule-hours .say=${say} .rule=${rule}></rule-hours>`;
  }

  /** What its air was read at last, and when where that is long ago. */
  #air({ id, lastAir }: SmokerDrawing) {
    const { say } = this;
    const fire = fireWords[say.language];
    if (!lastAir) return fire.noReading;
    const { trendCPerHour: trend, tempC, at } = lastAir;
    const ago = agoWhereOld(at, this.now, say);
    const isStill = ago !== '' || Math.abs(trend) < TREND_C_PER_HOUR;
    const way = isStill ? '' : trend > 0 ? fire.rising : fire.falling;
    const is = [temperature(tempC, say), way].filter(Boolean).join(' ');
    return html`<span class=${this.marks.has(id) ? 'here' : ''}>${is}</span>
      ${ago && html`<span class="ago">${ago}</span>`}`;
  }

  /** What it is set to, and what may have moved it from there. */
  #fire({ setC, openedAt, unseen }: SmokerDrawing) {
    const { say } = this;
    const set = setC !== null && pitWords[say.language].setTo(temperature(setC, say));
    const fire = fireWords[say.language];
    const door = openedAt !== null && fire.doorAt(clockTime(openedAt, say));
    const fell = unseen && fire.unseenFall(clockRange(unseen.from, unseen.to, say));
    return [set, door, fell].filter(Boolean).join(' · ');
  }

  /** What is to be done about a fire that fails or that nobody has read, by whom and when. */
  #order(smoker: SmokerDrawing) {
    const said = fireOrder(smoker, this.now, this.say);
    if (!said) return nothing;
    return html`<span class="order pressing"><span class="mind">${said}</span></span>`;
  }

  #since({ kind, since, backAt }: NonNullable<SmokerDrawing['spell']>) {
    const { say } = this;
    const fire = fireWords[say.language];
    const row = (said: string) => html`<span class="fire">${said}</span>`;
    const at = sinceClock(since, this.now, say);
    if (kind === 'cold') return row(fire.coldSince(at));
    const back = backAt && clockTime(backAt, say);
    if (backAt && back && backAt <= this.now) return row(fire.downBeyond(at, back));
    return row(fire.downSince(at, back));
  }

  #heat({ heat }: SmokerDrawing) {
    const { fatDown, fatUp, heatSide } = pitWords[this.say.language];
    const said = { below: fatDown, above: fatUp, side: heatSide }[heat];
    const turn = { below: 0, above: 180, side: 90 }[heat];
    return html`<span class="heat">
      <svg viewBox="0 0 100 100" aria-hidden="true">
        ${svg`<path transform=${`rotate(${turn} 50 50)`} d="M50 96V12M16 46L50 10L84 46" />`}
      </svg>
      ${said}
    </span>`;
  }
}
