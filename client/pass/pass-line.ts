import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { PassLine as Line } from '../../shared/view/index.ts';
import { passWords, type Say, sayAllergen, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { fitOf, type NameFit } from './name-fit.ts';
import { passLineStyles } from './pass-line.css.ts';
import {
  halfOnce,
  isOver,
  mustSetOut,
  type Said,
  sayInShort,
  sayNext,
  sayOutcome,
  sayPan,
  saySold,
} from './pass-said.ts';
import { hasReady } from './room.ts';

/** More pans than these are counted with the last of them. */
const MOST_PANS = 3;

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
  @property({ reflect: true }) fit: NameFit = 'one';
  /** Its name in small letters, as others of its page have to have theirs. */
  @property({ type: Boolean, reflect: true }) lean = false;
  @property({ type: Boolean, reflect: true }) due = false;

  protected override willUpdate(): void {
    const { line } = this;
    this.fit = line ? nameFit(line, this) : 'one';
    this.due = line !== null && (mustSetOut(line, this) || isOver(line, this));
  }

  protected override draw() {
    const { line } = this;
    if (!line) return nothing;
    const bar = this.due ? html`<i class="bar"></i>` : nothing;
    return html`${bar}
      <h2><span class="name">${textIn(line.dish.name, this.say)}</span> ${this.#named(line)}</h2>
      ${this.short ? this.#inShort(line) : this.#whole(line)}
      <slot></slot>`;
  }

  #whole(line: Line) {
    const pans = barredFirst(line).slice(0, MOST_PANS);
    const shown = halfOnce(pans.map((left) => sayPan(left, this)));
    const more = line.pans.length - shown.length;
    const outcome = sayOutcome(line, this);
    const first = firstMinded([...shown, outcome]);
    const { sold, soldOutAt } = line.dish;
    const isCounted = sold > 0 && soldOutAt === null && !mustSetOut(line, this);
    const counted = `${outcome ? '· ' : ''}${saySold(line, this).said}`;
    return html`<div class="ready">
        <b>${line.ready}</b> <small>${saidReady(line, this.say)}</small>
      </div>
      <div class="pans">
        <p>
          ${shown.map((said) => html`${spoken(said, first)} `)}
          ${more > 0 ? html`<span>${this.words.later(more)}</span>` : nothing}
        </p>
      </div>
      <div class="then ${outcome || isCounted ? '' : 'one'}">
        ${
          outcome || isCounted
            ? html`<p class="outcome">
                ${outcome ? spoken(outcome, first) : nothing}${
                  isCounted ? html`<span class="soft counted">${counted}</span>` : nothing
                }
              </p>`
            : nothing
        }
        <p>${spoken(sayNext(line, this), first)}</p>
      </div>`;
  }

  #inShort(line: Line) {
    const said = sayInShort(line, this);
    const first = firstMinded(said);
    const shown = hasReady(passWords[this.say.language]) ? '' : 'unseen';
    return html`<div class="ready">
        <b>${line.ready}</b> <span class=${shown}>${saidReady(line, this.say)}</span>
      </div>
      <div class="then" data-first=${said[0]?.said ?? ''}>
        <div class="rows">${said.map((each) => html`${spoken(each, first)} `)}</div>
      </div>`;
  }

  /** What somebody who asks must be told of it. */
  #named({ dish: { allergens } }: Line) {
    const { short, say } = this;
    const named = allergensOf(allergens, say, this.fit === 'long' && short);
    return named ? html`<small class="soft">(${named})</small>` : nothing;
  }
}

/** Of two columns a name and several allergens have no room: the strip names them all. */
const MOST_NAMED = 2;

/** By name, or counted where there are several and no room. */
function allergensOf(allergens: readonly string[], say: Say, isFull: boolean): string {
  if (isFull && allergens.length > MOST_NAMED) {
    return passWords[say.language].hasMany(allergens.length);
  }
  return allergens.map((each) => sayAllergen(each, say)).join(', ');
}

type Room = { readonly say: Say; readonly wide: number };

/** How its name has room with what is in it, all of it by name. */
export function nameFit({ dish }: Line, { say, wide }: Room): NameFit {
  const allergens = allergensOf(dish.allergens, say, false);
  return fitOf({ name: textIn(dish.name, say), allergens }, wide);
}

const saidReady = ({ ready }: Line, { language }: Say) =>
  passWords[language][ready === 1 ? 'readyOne' : 'ready'];

/** What may not go out is said where there is room for but one. */
const barredFirst = ({ pans }: Line) =>
  [...pans].sort((a, b) => Number(b.pan.barred !== null) - Number(a.pan.barred !== null));

/** What presses; the first of it is underlined, for one thing at a time is minded. */
const firstMinded = (all: readonly (Said | null)[]) => all.find((each) => each?.how === 'mind');

function spoken(said: Said, first: Said | null | undefined) {
  const isOther = said.how === 'mind' && said !== first;
  return html`<span class=${isOther ? 'heavy' : said.how}>${said.said}</span>`;
}
