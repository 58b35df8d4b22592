import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Instant, Kilograms } from '../../shared/kernel/index.ts';
import { fromPounds, instant, kilograms } from '../../shared/kernel/index.ts';
import type { Mark, PanEnd } from '../../shared/view/index.ts';
import { clockTime, closingWords, sayPanEnd, textIn, weight } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import '../parts/digit-keys.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { KeepsFocus } from './keeps-focus.ts';

/**
 * What is left of one batch, and where it goes: kept for another day at a weight, or thrown out.
 * Tells `carry` with the weight that is kept, or `undo`.
 */
@customElement('pan-end')
export class PanEndRow extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        justify-content: space-between;
        gap: 0 1em;
        padding: calc(var(--gap) / 2) 0;
        border-bottom: var(--hair) solid var(--pencil);
      }
      .said {
        flex: 1 1 16em;
      }
      .name {
        font-weight: 700;
      }
      .soft {
        font-size: var(--small);
        color: var(--soft);
      }
      .mind {
        font-weight: 800;
        text-decoration: underline;
        text-decoration-thickness: var(--line);
        text-underline-offset: 0.15em;
      }
      .tapped {
        text-decoration: underline dashed;
        text-underline-offset: 0.2em;
      }
      .pad {
        flex-basis: 100%;
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 8px;
        padding: var(--gap) 0;
      }
      .pad p {
        flex-basis: 100%;
      }
      .choices {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap) 2.5em;
      }
      .choices button {
        padding: 0 0.6em;
        border: var(--hair) solid var(--pencil);
        font-weight: 600;
      }
      .choices .takes {
        border: var(--heavy) solid var(--ink);
        font-weight: 800;
      }
      output {
        font-size: var(--figure);
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
        padding: 0 0.2em;
      }
      .follows {
        color: var(--soft);
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) pan!: PanEnd;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ attribute: false }) mark: Mark | null = null;
  @property({ type: Boolean }) undoable = false;
  /** Its service is: it may yet be sold. */
  @property({ type: Boolean }) on = false;
  /** The day is: nothing more is said of it. */
  @property({ type: Boolean }) closed = false;
  /** Null while nothing is weighed. */
  @state() private typed: string | null = null;
  @state() private asks = false;

  constructor() {
    super();
    new KeepsFocus(this);
  }

  protected override draw() {
    const { pan, say } = this;
    return html`<div class="said">
        <p class="name">${textIn(pan.name, say)}</p>
        <p class="soft ${this.mark ? 'tapped' : ''}">${sayPanEnd(pan, say)}${this.#held(pan)}</p>
      </div>
      ${this.#below(pan)}`;
  }

  #below(pan: PanEnd) {
    if (this.closed) return nothing;
    if (this.typed !== null) return this.#pad(pan, this.typed);
    return this.asks ? this.#meant(pan) : this.#choices(pan);
  }

  #held(pan: PanEnd) {
    const { heldUntil, keptKg } = pan;
    const words = closingWords[this.say.language];
    if (heldUntil === null || keptKg !== null) return nothing;
    if (this.#isTooLong(pan)) return html` · <span class="mind">${words.heldTooLong}</span>`;
    return html` · ${words.heldTill(clockTime(heldUntil, this.say))}`;
  }

  #isTooLong({ heldUntil, keptKg }: PanEnd): boolean {
    return heldUntil !== null && keptKg === null && heldUntil <= this.now;
  }

  /** The usual one is heavy and where the finger goes; the other is light, and apart from it. */
  #choices(pan: PanEnd) {
    const { say } = this;
    const words = closingWords[say.language];
    const box = (label: string, does: () => void, isUsual: boolean) =>
      html`<button
        class=${isUsual ? 'takes' : ''}
        aria-label=${`${label}: ${textIn(pan.name, say)}`}
        @click=${does}
      >
        ${label}
      </button>`;
    if (this.undoable) {
      const undo = box(this.words.undo, () => this.tell('undo', null), true);
      return html`<div class="choices">${undo}</div>`;
    }
    const isOut = pan.keptKg === 0;
    const goes = this.#isTooLong(pan);
    return html`<div class="choices">
      ${isOut ? nothing : box(words.throwOut, () => this.#throwOut(), goes)}
      ${box(words.keepSome, () => this.#type(''), !goes && !isOut)}
    </div>`;
  }

  /** What may yet be sold goes with no slip of a finger. */
  #throwOut(): void {
    if (this.on && !this.#isTooLong(this.pan)) this.asks = true;
    else this.#carry(kilograms(0));
  }

  #meant(pan: PanEnd) {
    const { say } = this;
    const words = closingWords[say.language];
    const question = words.meant(sayPanEnd(pan, say));
    const leave = () => {
      this.asks = false;
    };
    const choices = [
      { label: words.throwOut, choose: () => this.#carry(kilograms(0)), takes: true },
      { label: this.words.leaveIt, choose: leave, leaves: true },
    ];
    return html`<div class="pad">
      <p>${question}</p>
      <choice-strip .say=${say} .name=${question} .choices=${choices}></choice-strip>
    </div>`;
  }

  #pad(pan: PanEnd, typed: string) {
    const { say } = this;
    const words = closingWords[say.language];
    const close = () => {
      this.typed = null;
    };
    const planned = pan.keptKg ?? pan.weightKg;
    const shown = typed === '' ? weight(planned, say) : `${typed} ${say.weight}`;
    const keep = () => this.#carry(typed === '' ? planned : this.#kilograms(Number(typed)));
    const choices = [
      { label: words.keepThis, choose: keep, takes: true },
      { label: this.words.leaveIt, choose: close, leaves: true },
    ];
    return html`<div class="pad" role="group" aria-label=${words.whatOf(textIn(pan.name, say))}>
      <p>
        ${words.weighed} <output class=${typed === '' ? 'follows' : ''}>${shown}</output>
      </p>
      <digit-keys
        .say=${say}
        .typed=${typed}
        .most=${6}
        point
        @typed=${({ detail }: CustomEvent<string>) => this.#type(detail)}
        @leave=${close}
      ></digit-keys>
      <choice-strip .say=${say} .name=${textIn(pan.name, say)} .choices=${choices}></choice-strip>
    </div>`;
  }

  #type(typed: string): void {
    this.typed = typed;
  }

  #kilograms(shown: number): Kilograms {
    return this.say.weight === 'lb' ? fromPounds(shown) : kilograms(shown);
  }

  #carry(weightKg: Kilograms): void {
    this.typed = null;
    this.asks = false;
    this.tell('carry', weightKg);
  }
}
