import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Instant, SlotId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { Mark, PitRule, SmokerDrawing } from '../../shared/view/index.ts';
import { clockRange, clockTime, temperature, textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './clock-time.ts';
import { Part } from './part.ts';
import type { Picked } from './rack-lane.ts';
import './rack-lane.ts';
import './rule-hours.ts';

/** Less than this in an hour is the smoker's own breathing, not a trend. */
const TREND_C_PER_HOUR = 8;
/** A reading this old is shown with its time. */
const OLD_MS = 40 * 60_000;

/** One smoker cut open: its fire, its racks from top to bottom, where the heat comes from. */
@customElement('smoker-cutaway')
export class SmokerCutaway extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-rows: auto minmax(0, 1fr) auto;
        padding: 0 var(--edge) calc(4px * var(--arcmin));
        min-height: 0;
        min-width: 0;
      }
      .title {
        width: 100%;
        display: flex;
        align-items: baseline;
        justify-content: space-between;
        flex-wrap: wrap;
        column-gap: 0.2em;
        min-height: max(44px, calc(32px * var(--arcmin)));
        line-height: 1.15;
      }
      h2 {
        font-size: var(--body);
        letter-spacing: -0.02em;
        font-weight: 800;
        text-decoration: underline;
        text-decoration-thickness: var(--line);
        text-underline-offset: 0.14em;
      }
      /* Name and air on one line, how it is fired on the next: what is under it is for racks. */
      .then {
        flex-basis: 100%;
        height: 0;
      }
      .fire {
        font-size: var(--small);
        font-weight: 700;
        text-align: left;
      }
      .air {
        font-size: var(--small);
        font-weight: 800;
      }
      .air clock-time {
        color: var(--soft);
        font-weight: 600;
      }
      .here {
        text-decoration: underline dashed;
        text-underline-offset: 0.2em;
      }
      .racks {
        display: grid;
        grid-auto-rows: minmax(var(--rack-least, var(--touch)), 1fr);
        min-height: 0;
        overflow: hidden auto;
      }
      .heat {
        display: flex;
        align-items: baseline;
        gap: 0.35em;
        font-size: var(--small);
        font-weight: 700;
      }
      .heat svg {
        height: 1em;
        width: 1em;
        align-self: center;
        fill: none;
        stroke: var(--ink);
        stroke-width: 16;
      }
      :host([narrow]) .racks {
        grid-auto-rows: max(var(--touch), calc(104px * var(--arcmin)));
      }
    `,
  ];

  @property({ attribute: false }) smoker: SmokerDrawing | null = null;
  @property({ type: Number }) laneM = 1;
  @property({ attribute: false }) rule: PitRule | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ attribute: false }) marks: ReadonlyMap<string, Mark> = new Map();
  @property({ attribute: false }) picked: Picked | null = null;
  @property({ attribute: false }) askedSlot: SlotId | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;

  protected override draw() {
    const { smoker } = this;
    if (!smoker) return nothing;
    return html`<button class="title" @click=${() => this.tell('air', smoker.id)}>
        <h2>${textIn(smoker.name, this.say)}</h2>
        <span class="air">${this.#air(smoker)}</span>
        <span class="then"></span>
        ${smoker.spell?.kind === 'down' ? nothing : this.#heat(smoker)}
        <span class="fire">${this.#fire(smoker)}</span>
      </button>
      <div class="racks">
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
          ></rack-lane>`,
        )}
      </div>
      ${this.#hours(smoker)}`;
  }

  /** Which hours the rules under the racks hold. */
  #hours({ racks }: SmokerDrawing) {
    const { rule, say } = this;
    if (!rule || racks.every(({ loads }) => loads.length === 0)) return nothing;
    return html`<rule-hours .say=${say} .rule=${rule}></rule-hours>`;
  }

  /** What its air was read at last, and when where that is long ago. */
  #air({ id, lastAir }: SmokerDrawing) {
    const { words, say } = this;
    if (!lastAir) return words.noReading;
    const { trendCPerHour: trend, tempC, at } = lastAir;
    const way = Math.abs(trend) < TREND_C_PER_HOUR ? '' : trend > 0 ? words.rising : words.falling;
    const is = [temperature(tempC, say), way].filter(Boolean).join(' ');
    const isOld = this.now - at > OLD_MS;
    return html`<span class=${this.marks.has(id) ? 'here' : ''}>${is}</span>
      ${isOld ? html`<clock-time .say=${say} .at=${at}></clock-time>` : nothing}`;
  }

  /** What it is set to, or why it is not so: what it was set to says nothing while it is out. */
  #fire({ setC, spell, openedAt, unseen }: SmokerDrawing) {
    const { words, say } = this;
    const set = setC !== null && words.setTo(temperature(setC, say));
    const door = openedAt !== null && words.doorAt(clockTime(openedAt, say));
    const fell = unseen && words.unseenFall(clockRange(unseen.from, unseen.to, say));
    return [spell ? this.#spell(spell) : set, door, fell].filter(Boolean).join(' · ');
  }

  #spell({ kind, since, backAt }: NonNullable<SmokerDrawing['spell']>): string {
    const { words, say } = this;
    const at = clockTime(since, say);
    if (kind === 'cold') return words.coldSince(at);
    const back = backAt && clockTime(backAt, say);
    if (backAt && back && backAt <= this.now) return words.downBeyond(at, back);
    return words.downSince(at, back);
  }

  #heat({ heat }: SmokerDrawing) {
    const { words } = this;
    const said = { below: words.fatDown, above: words.fatUp, side: words.heatSide }[heat];
    const turn = { below: 0, above: 180, side: 90 }[heat];
    return html`<span class="heat">
      <svg viewBox="0 0 100 100" aria-hidden="true">
        ${svg`<path transform=${`rotate(${turn} 50 50)`} d="M50 96V12M16 46L50 10L84 46" />`}
      </svg>
      ${said}
    </span>`;
  }
}
