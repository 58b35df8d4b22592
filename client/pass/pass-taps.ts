import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ServiceId } from '../../shared/kernel/index.ts';
import type { Intent, Mark, PassLine } from '../../shared/view/index.ts';
import { clockTime, passWords, sayAllergen, textIn } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

const STEPS = [1, 5] as const;

/** A strip that nobody taps closes again, so that it hides nothing. */
const STRIP_MS = 20_000;

/**
 * The places to tap of a dish: what is rarer, and so many more sold, as far as so many stand ready.
 * Undo takes the first place for some seconds, beside where the finger was. Nothing else moves for
 * it, nor for the strip of what is rarer, which lies over the lines beside. Asks (`ask`) and tells
 * `undo`.
 */
@customElement('pass-taps')
export class PassTaps extends Part {
  static override styles = [
    base,
    css`
      /* Boxes and strip lie in the grid of the line that they are in. */
      :host {
        display: contents;
      }
      .boxes {
        display: flex;
        justify-content: flex-end;
        gap: 8px;
        padding-right: var(--edge);
        grid-row: var(--boxes-row);
        align-items: center;
      }
      :host([short]) .boxes {
        grid-column: 3;
        align-self: center;
      }
      .box {
        min-width: max(var(--touch), calc(1.6 * var(--body)));
        height: max(var(--touch), calc(1.55 * var(--body)));
        padding: 0 0.15em;
        border: var(--line) solid var(--ink);
        text-align: center;
        font-weight: 800;
        line-height: 1;
      }
      .tapped {
        border-style: dashed;
      }
      .here {
        border-style: double;
        border-width: max(4px, var(--heavy));
      }
      /* Its width is its own, whatever border it has. */
      .step {
        width: max(var(--touch), calc(1.7 * var(--body)));
        padding: 0;
      }
      .box:disabled {
        border-color: var(--pencil);
        color: var(--soft);
        cursor: default;
      }
      /* As wide as its wider word, whichever of them it shows. */
      .first {
        font-size: var(--small);
        display: grid;
        place-items: center;
      }
      .first > * {
        grid-area: 1 / 1;
      }
      /* Heavier inwards: a wider border would move what is beside it. */
      .undo {
        box-shadow: inset 0 0 0 calc(var(--heavy) - var(--line)) var(--ink);
      }
      .undo > :last-child,
      .less > :first-child {
        visibility: hidden;
      }
      choice-strip {
        position: absolute;
        z-index: 2;
        inset: 100% 0 auto 0;
        justify-content: flex-end;
        padding: 8px var(--edge) 8px 8px;
        background: var(--ground);
        border: solid var(--ink);
        border-width: var(--line) 0;
        font-size: var(--small);
      }
      :host([up]) choice-strip {
        inset: auto 0 100% 0;
      }
      :host([narrow]) .boxes {
        grid-column: 1 / -1;
        padding: 0.2em 0;
      }
    `,
  ];

  @property({ attribute: false }) line: PassLine | null = null;
  @property({ attribute: false }) service: ServiceId | null = null;
  @property({ attribute: false }) mark: Mark | null = null;
  @property({ type: Boolean }) undoable = false;
  @property({ type: Boolean, reflect: true }) narrow = false;
  /** In one of two columns there is room for one of the steps; the other is behind *less*. */
  @property({ type: Boolean, reflect: true }) short = false;
  /** The strip opens over the lines above: below are none. */
  @property({ type: Boolean, reflect: true }) up = false;
  @state() private isOpen = false;

  #closing: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#closing);
  }

  protected override draw() {
    const { line } = this;
    if (!line) return nothing;
    const name = textIn(line.dish.name, this.say);
    return html`<div class="boxes">
        ${this.#first(name)}
        ${(this.short ? STEPS.slice(0, 1) : STEPS).map((step) => this.#step(line, step, name))}
      </div>
      ${this.isOpen ? this.#strip(line, name) : nothing}`;
  }

  #step({ dish, ready }: PassLine, step: number, name: string) {
    const words = passWords[this.say.language];
    const count = () => this.#ask({ kind: 'sold', dish: dish.dish, sold: dish.sold + step });
    return html`<button
      class="box step ${this.mark ?? ''}"
      data-quick
      aria-label=${words.soldMore(step, name)}
      ?disabled=${step > ready}
      @click=${count}
    >
      +${step}
    </button>`;
  }

  #first(name: string) {
    const { less, undo } = passWords[this.say.language];
    const [kind, said, tapped] = this.undoable
      ? ['undo', undo, () => this.tell('undo', null)]
      : ['less', less, () => this.#show(!this.isOpen)];
    return html`<button
      class="box first ${kind}"
      aria-expanded=${this.undoable ? nothing : this.isOpen}
      aria-label="${said}: ${name}"
      @click=${tapped}
    >
      <span>${undo}</span><span>${less}</span>
    </button>`;
  }

  #strip({ pans, dish, ready }: PassLine, name: string) {
    const { say } = this;
    const words = passWords[say.language];
    const close = () => this.#show(false);
    const empty = pans.map(({ pan, left }) => ({
      label: words.panEmpty(left, pan.heldUntil && clockTime(pan.heldUntil, say)),
      choose: () => this.#ask({ kind: 'panEmpty', batch: pan.batch }),
    }));
    const oneLess = {
      label: words.oneLess,
      choose: () => this.#ask({ kind: 'sold', dish: dish.dish, sold: dish.sold - 1 }),
    };
    const soldOut = {
      label: words.soldOut,
      choose: () => this.#ask({ kind: 'soldOut', dish: dish.dish }),
    };
    const behind = STEPS.slice(this.short ? 1 : STEPS.length).filter((step) => step <= ready);
    const steps = behind.map((step) => ({
      label: `+${step}`,
      name: words.soldMore(step, name),
      choose: () => this.#ask({ kind: 'sold', dish: dish.dish, sold: dish.sold + step }),
    }));
    const choices = [
      ...steps,
      ...empty,
      ...(dish.sold > 0 ? [oneLess] : []),
      ...(dish.soldOutAt === null ? [soldOut] : []),
      { label: this.words.close, choose: close, leaves: true },
    ];
    const allergens = dish.allergens.map((each) => sayAllergen(each, say)).join(', ');
    const named = allergens ? `${name}: ${words.has(allergens)}` : name;
    return html`<choice-strip .say=${say} .name=${named} .choices=${choices}></choice-strip>`;
  }

  #show(isOpen: boolean): void {
    this.isOpen = isOpen;
    clearTimeout(this.#closing);
    if (isOpen) this.#closing = setTimeout(() => this.#show(false), STRIP_MS);
  }

  #ask(asked: Asked): void {
    this.#show(false);
    if (asked.kind === 'panEmpty') this.ask(asked);
    else if (this.service) this.ask({ ...asked, service: this.service });
  }
}

type PassIntent = Extract<Intent, { kind: 'sold' | 'soldOut' | 'panEmpty' }>;
/** The service is that of the whole wall. */
type Asked = PassIntent extends infer Each
  ? Each extends unknown
    ? Omit<Each, 'service'>
    : never
  : never;
