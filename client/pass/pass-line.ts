import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { LeftInPan, PassLine as Line, PassPan } from '../../shared/view/index.ts';
import {
  clockRange,
  clockTime,
  nearClock,
  passWords,
  sayAllergen,
  textIn,
} from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { fitOf, type NameFit } from './name-fit.ts';
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
  /** Minutes of arc that a name has, with what is in it. */
  @property({ type: Number }) wide = Number.POSITIVE_INFINITY;
  @property({ reflect: true }) fit: NameFit = 'has';
  @property({ type: Boolean, reflect: true }) due = false;

  #isMinded = false;

  protected override willUpdate(): void {
    const { line } = this;
    this.fit = line ? this.#fitOf(line) : 'has';
    this.due = line !== null && (this.#mustCut(line) || this.#isOver(line));
  }

  #fitOf({ dish }: Line): NameFit {
    const { say } = this;
    const bare = this.#bare(dish.allergens);
    const has = this.short || !bare ? bare : passWords[say.language].has(bare);
    return fitOf({ name: textIn(dish.name, say), bare, has }, this.wide);
  }

  protected override draw() {
    const { line } = this;
    if (!line) return nothing;
    this.#isMinded = false;
    const bar = this.due ? html`<i class="bar"></i>` : nothing;
    return html`${bar} ${this.short ? this.#inShort(line) : this.#whole(line)}`;
  }

  #whole(line: Line) {
    const { say } = this;
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
    const presses = runsOut !== null || dish.soldOutAt !== null || this.#mustCut(line);
    // What may not go out is said before what that makes of the service.
    const [barred, first] = [
      pans.find(({ pan }) => pan.barred),
      pans.find(({ pan }) => !pan.barred),
    ];
    const others = pans.filter((each) => each !== barred && each !== first);
    return html`<h2>
        <span class="name">${textIn(dish.name, say)}</span> ${this.#named(line)}
      </h2>
      <div class="ready"><b>${ready}</b> ${words.ready}</div>
      <div class="then">
        ${barred ? this.#pan(barred) : nothing} ${presses ? this.#outcome(line) : nothing}
        ${first ? this.#pan(first) : nothing} ${others.slice(0, 1).map((left) => this.#pan(left))}
        ${next ? this.#lands(next, line) : nothing} ${empty === 'after' ? this.#noNext() : nothing}
        ${dish.sold > 0 ? html`<span class="soft">${words.sold(dish.sold)}</span>` : nothing}
      </div>
      <slot></slot>`;
  }

  /** What somebody who asks must be told of it; bare where there is little room. */
  #named({ dish: { allergens } }: Line) {
    const bare = this.#bare(allergens);
    if (!bare) return nothing;
    const isBare = this.short || this.fit !== 'has';
    return html`<small class="soft">
      ${isBare ? bare : passWords[this.say.language].has(bare)}
    </small>`;
  }

  /** By name, or counted where there are several for one of two columns. */
  #bare(allergens: readonly string[]): string {
    const { say } = this;
    if (this.short && allergens.length > MOST_NAMED) {
      return passWords[say.language].hasMany(allergens.length);
    }
    return allergens.map((each) => sayAllergen(each, say)).join(', ');
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
      return this.#mind(words.barred(left, barred));
    }
    if (stage === 'held' && (heldUntil === null || heldUntil > this.now)) {
      const till = heldUntil && this.#till(heldUntil, next);
      const isSoon = heldUntil !== null && heldUntil - this.now < SOON_MS;
      const said = words.toCut(left, till);
      return isSoon ? this.#mind(said) : html`<span>${said}</span>`;
    }
    if (heldUntil === null) return html`<span class="soft">${words.heldFree(left)}</span>`;
    if (heldUntil <= this.now) return this.#mind(words.holdOver(left));
    const said = words.heldTill(left, this.#till(heldUntil, next));
    if (heldUntil - this.now < SOON_MS) return this.#mind(said);
    return html`<span class="soft">${said}</span>`;
  }

  /** What presses; the first of it is underlined, for one thing at a time is minded. */
  #mind(said: string) {
    const isFirst = !this.#isMinded;
    this.#isMinded = true;
    return html`<span class=${isFirst ? 'mind' : 'heavy'}>${said}</span>`;
  }

  #till(at: Instant, next: LeftInPan | undefined): string {
    const { heldUntil = null } = next?.pan ?? {};
    // The half of the day is said once, behind the last time that lies in it.
    if (heldUntil === null || heldUntil < at) return this.#clock(at);
    const [range = ''] = clockRange(at, heldUntil, this.say).split('–');
    return range;
  }

  #clock(at: Instant): string {
    return nearClock(clockTime(at, this.say), { at, now: this.now });
  }

  #runsOut(line: Line) {
    const words = passWords[this.say.language];
    const { sold, soldOutAt } = line.dish;
    const outcome = this.#outcome(line);
    const dot = outcome === nothing ? '' : '· ';
    const counted = html`<span class="soft counted">${dot}${words.sold(sold)}</span>`;
    const isSaid = sold > 0 && soldOutAt === null && !this.#mustCut(line);
    return html`<p class="outcome">${outcome}${isSaid ? counted : nothing}</p>`;
  }

  /** What will come of the dish at this service; that nothing is ready its figure says. */
  #outcome(line: Line) {
    const { say } = this;
    const words = passWords[say.language];
    const { runsOut, dish, empty } = line;
    if (dish.soldOutAt !== null) return this.#mind(words.soldOutSince(this.#clock(dish.soldOutAt)));
    if (this.#mustCut(line)) return this.#mind(words.cutNow);
    if (!runsOut) return empty ? nothing : html`<span class="soft">${words.lasts}</span>`;
    const { at, missing } = runsOut;
    return this.#mind((empty ? words.shortFrom : words.runsOut)(this.#clock(at), missing));
  }

  #next(line: Line) {
    const { next } = line;
    if (next) return html`<p>${this.#lands(next, line)}</p>`;
    return html`<p>${this.#noNext()}</p>`;
  }

  #noNext() {
    return html`<span class="soft">${passWords[this.say.language].noNext}</span>`;
  }

  #lands({ readyLowAt, readyHighAt, portions }: PassPan, { empty }: Line) {
    const { first, next } = passWords[this.say.language];
    const range = clockRange(readyLowAt, readyHighAt, this.say);
    const when = nearClock(range, { at: readyHighAt, now: this.now });
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
