import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { LeftInPan, PassLine as Line, PassPan } from '../../shared/view/index.ts';
import { clockRange, clockTime, passWords, sayAllergen, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { passLineStyles } from './pass-line.css.ts';

/** A dish of which nothing is cut while it is sold needs a hand; so does what is held too long. */
const SOON_MS = 15 * 60_000;
/** More pans than these are counted with the last of them. */
const MOST_PANS = 3;
/** So many allergens have room beside a name in one of two columns; the strip names them all. */
const MOST_NAMED = 2;

/** One dish at the pass: portions ready, till when each may be held, what lands, what runs out. */
@customElement('pass-line')
export class PassLine extends Part {
  static override styles = [base, passLineStyles];

  @property({ attribute: false }) line: Line | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  /** Whether it is being sold now. */
  @property({ type: Boolean }) open = false;
  @property({ type: Boolean, reflect: true }) narrow = false;
  /** One of two columns: what presses comes first, and what is as it should be is not said. */
  @property({ type: Boolean, reflect: true }) short = false;
  /** Some name on the wall has no room on one line beside what is in it: all have two. */
  @property({ type: Boolean, reflect: true }) long = false;
  @property({ type: Boolean, reflect: true }) due = false;

  protected override willUpdate(): void {
    const { line } = this;
    this.due = line !== null && (this.#mustCut(line) || this.#isOver(line));
  }

  protected override draw() {
    const { line, say } = this;
    if (!line) return nothing;
    if (this.short) return this.#inShort(line);
    const words = passWords[say.language];
    const { dish, ready } = line;
    return html`<h2><span class="name">${textIn(dish.name, say)}</span> ${this.#named(line)}</h2>
      <div class="ready"><b>${ready}</b> <small>${words.ready}</small></div>
      <div class="pans">${this.#pans(line)}</div>
      <div class="then">${this.#runsOut(line)} ${this.#next(line)}</div>
      <slot></slot>`;
  }

  #inShort(line: Line) {
    const { say } = this;
    const words = passWords[say.language];
    const { dish, ready, pans, next, runsOut, empty } = line;
    const isOver = dish.soldOutAt !== null || empty === 'after';
    const presses = runsOut !== null || isOver || this.#mustCut(line);
    // What may not go out is said before what that makes of the service.
    const [barred, first] = [
      pans.find(({ pan }) => pan.barred),
      pans.find(({ pan }) => !pan.barred),
    ];
    const others = pans.filter((each) => each !== barred && each !== first);
    return html`<h2>
        <span class="name">${textIn(dish.name, say)}</span> ${this.#namedInShort(line)}
      </h2>
      <div class="ready"><b>${ready}</b> ${words.ready}</div>
      <div class="then">
        ${barred ? this.#pan(barred) : nothing} ${presses ? this.#outcome(line) : nothing}
        ${first ? this.#pan(first) : nothing} ${others.slice(0, 1).map((left) => this.#pan(left))}
        ${next ? this.#lands(next, line) : nothing}
        ${dish.sold > 0 ? html`<span class="soft">${words.sold(dish.sold)}</span>` : nothing}
      </div>
      <slot></slot>`;
  }

  /** What somebody who asks must be told of it. */
  #named({ dish: { allergens } }: Line) {
    const { say } = this;
    if (allergens.length === 0) return nothing;
    const named = allergens.map((each) => sayAllergen(each, say)).join(', ');
    return html`<small class="soft">${passWords[say.language].has(named)}</small>`;
  }

  /** The same beside a name that must stay whole: bare, or counted where there are several. */
  #namedInShort({ dish: { allergens } }: Line) {
    const { say } = this;
    if (allergens.length === 0) return nothing;
    const named =
      allergens.length > MOST_NAMED
        ? passWords[say.language].hasMany(allergens.length)
        : allergens.map((each) => sayAllergen(each, say)).join(', ');
    return html`<small class="soft">${named}</small>`;
  }

  #pans({ pans }: Line) {
    const shown = pans.slice(0, MOST_PANS);
    const more = pans.length - shown.length;
    return html`<p>
      ${shown.map((left, i) => html`${i > 0 ? ' · ' : nothing}${this.#pan(left, shown[i + 1])}`)}
      ${more > 0 ? this.words.later(more) : nothing}
    </p>`;
  }

  #pan({ pan: { heldUntil, stage, barred }, left }: LeftInPan, next?: LeftInPan) {
    const words = passWords[this.say.language];
    if (barred) {
      return html`<span class="mind">${words.barred(left, barred)}</span>`;
    }
    if (stage === 'held' && (heldUntil === null || heldUntil > this.now)) {
      const till = heldUntil && this.#till(heldUntil, next);
      const isSoon = heldUntil !== null && heldUntil - this.now < SOON_MS;
      return html`<span class=${isSoon ? 'mind' : ''}>${words.toCut(left, till)}</span>`;
    }
    if (heldUntil === null) return html`<span class="soft">${words.heldFree(left)}</span>`;
    if (heldUntil <= this.now) return html`<span class="mind">${words.holdOver(left)}</span>`;
    const said = words.heldTill(left, this.#till(heldUntil, next));
    return html`<span class=${heldUntil - this.now < SOON_MS ? 'mind' : 'soft'}>${said}</span>`;
  }

  /** The half of the day is said once, behind the last time that lies in it. */
  #till(at: Instant, next: LeftInPan | undefined): string {
    const { say } = this;
    const { heldUntil = null } = next?.pan ?? {};
    if (heldUntil === null || heldUntil < at) return clockTime(at, say);
    const [range = ''] = clockRange(at, heldUntil, say).split('–');
    return range;
  }

  #runsOut(line: Line) {
    const words = passWords[this.say.language];
    const { sold, soldOutAt } = line.dish;
    const counted = html`<span class="soft"> · ${words.sold(sold)}</span>`;
    const isSaid = sold > 0 && soldOutAt === null && !this.#mustCut(line);
    return html`<p>${this.#outcome(line)}${isSaid ? counted : nothing}</p>`;
  }

  /** What will come of the dish at this service. */
  #outcome(line: Line) {
    const { say } = this;
    const words = passWords[say.language];
    const { runsOut, dish, empty } = line;
    const mind = (said: string) => html`<span class="mind">${said}</span>`;
    if (dish.soldOutAt !== null) return mind(words.soldOutSince(clockTime(dish.soldOutAt, say)));
    if (this.#mustCut(line)) return mind(words.cutNow);
    if (!runsOut) {
      return html`<span class="soft">${empty ? words.empty[empty] : words.lasts}</span>`;
    }
    const { at, missing } = runsOut;
    return mind((empty ? words.shortFrom : words.runsOut)(clockTime(at, say), missing));
  }

  #next(line: Line) {
    const { next } = line;
    if (next) return html`<p>${this.#lands(next, line)}</p>`;
    return html`<p class="soft">${passWords[this.say.language].noNext}</p>`;
  }

  #lands({ readyLowAt, readyHighAt, portions }: PassPan, { empty }: Line) {
    const { first, next } = passWords[this.say.language];
    const when = clockRange(readyLowAt, readyHighAt, this.say);
    return html`<span>${(empty === 'before' ? first : next)(portions, when)}</span>`;
  }

  #mustCut({ ready, held, dish }: Line): boolean {
    return this.open && ready === 0 && held > 0 && dish.soldOutAt === null;
  }

  #isOver({ pans }: Line): boolean {
    return pans.some(
      ({ pan: { heldUntil, barred } }) =>
        barred !== null || (heldUntil !== null && heldUntil <= this.now),
    );
  }
}
