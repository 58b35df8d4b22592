import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { LeftInPan, PassLine as Line } from '../../shared/view/index.ts';
import { clockRange, clockTime, passWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

/** A dish of which nothing is cut while it is sold needs a hand; so does what is held too long. */
const SOON_MS = 15 * 60_000;
/** More pans than these are counted with the last of them. */
const MOST_PANS = 3;

/** One dish at the pass: portions ready, till when each may be held, what lands, what runs out. */
@customElement('pass-line')
export class PassLine extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1.2fr) 5.7em minmax(0, 1fr) auto;
        align-items: center;
        column-gap: calc(14px * var(--arcmin));
        padding: 0.1em 0 0.1em calc(var(--edge) - 10px * var(--arcmin));
        border-left: calc(10px * var(--arcmin)) solid transparent;
        border-bottom: var(--hair) solid var(--pencil);
        min-height: max(calc(var(--touch) + 8px), calc(74px * var(--arcmin)));
        line-height: 1.1;
      }
      :host([due]) {
        border-left-color: var(--brick);
      }
      h2 {
        font-weight: 800;
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      p {
        font-size: var(--small);
        font-weight: 600;
      }
      .ready {
        text-align: right;
        white-space: nowrap;
      }
      b {
        font-size: var(--figure);
        font-weight: 800;
      }
      .mind {
        font-weight: 800;
        text-decoration: underline;
        text-decoration-thickness: var(--line);
        text-underline-offset: 0.15em;
      }
      .soft {
        color: var(--soft);
      }
      :host([narrow]) {
        grid-template-columns: minmax(0, 1fr) auto;
        padding-right: var(--edge);
      }
      :host([narrow]) .then {
        grid-column: 1 / -1;
      }
    `,
  ];

  @property({ attribute: false }) line: Line | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  /** Whether it is being sold now. */
  @property({ type: Boolean }) open = false;
  @property({ type: Boolean, reflect: true }) narrow = false;
  @property({ type: Boolean, reflect: true }) due = false;

  protected override willUpdate(): void {
    this.due = this.line !== null && (this.#mustCut(this.line) || this.#isOver(this.line));
  }

  protected override draw() {
    const { line, say } = this;
    if (!line) return nothing;
    const words = passWords[say.language];
    const { dish, ready, held } = line;
    return html`<div>
        <h2>${textIn(dish.name, say)}</h2>
        ${this.#pans(line)}
      </div>
      <div class="ready">
        <b>${ready}</b> <span>${words.ready}</span>
        ${held > 0 ? html`<p>${words.toCut(held)}</p>` : nothing}
      </div>
      <div class="then">${this.#runsOut(line)} ${this.#next(line)}</div>
      <slot></slot>`;
  }

  #pans({ pans }: Line) {
    const shown = pans.slice(0, MOST_PANS);
    const more = pans.length - shown.length;
    return html`<p>
      ${shown.map((left, i) => html`${i > 0 ? ' · ' : nothing}${this.#pan(left)}`)}
      ${more > 0 ? this.words.later(more) : nothing}
    </p>`;
  }

  #pan({ pan: { heldUntil }, left }: LeftInPan) {
    const words = passWords[this.say.language];
    if (heldUntil === null) return html`<span class="soft">${words.heldFree(left)}</span>`;
    if (heldUntil <= this.now) return html`<span class="mind">${words.holdOver(left)}</span>`;
    const said = words.heldTill(left, clockTime(heldUntil, this.say));
    return html`<span class=${heldUntil - this.now < SOON_MS ? 'mind' : 'soft'}>${said}</span>`;
  }

  #runsOut(line: Line) {
    const { say } = this;
    const words = passWords[say.language];
    const { runsOut, dish } = line;
    if (dish.soldOutAt !== null) {
      return html`<p class="mind">${words.soldOutSince(clockTime(dish.soldOutAt, say))}</p>`;
    }
    if (this.#mustCut(line)) return html`<p class="mind">${words.cutNow}</p>`;
    const sold =
      dish.sold > 0 ? html`<span class="soft"> · ${words.sold(dish.sold)}</span>` : nothing;
    if (!runsOut) return html`<p><span class="soft">${words.lasts}</span>${sold}</p>`;
    const said = words.runsOut(clockTime(runsOut.at, say), runsOut.missing);
    return html`<p><span class="mind">${said}</span>${sold}</p>`;
  }

  #next({ next }: Line) {
    const { say } = this;
    const words = passWords[say.language];
    if (!next) return html`<p class="soft">${words.noNext}</p>`;
    const when = clockRange(next.readyLowAt, next.readyHighAt, say);
    return html`<p>${words.next(next.portions, when)}</p>`;
  }

  #mustCut({ ready, held, dish }: Line): boolean {
    return this.open && ready === 0 && held > 0 && dish.soldOutAt === null;
  }

  #isOver({ pans }: Line): boolean {
    return pans.some(({ pan: { heldUntil } }) => heldUntil !== null && heldUntil <= this.now);
  }
}
