import { css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

const STROKE = 22;
const HIGH = 70;
/** More groups than these are read as a number only. */
const MOST_GROUPS = 6;

/**
 * Pieces done, as strokes in fives with the fifth across, and the figure beside. A tap adds one;
 * strokes that the hub does not have yet are drawn thin.
 */
@customElement('tally-strokes')
export class TallyStrokes extends Part {
  static override styles = [
    base,
    css`
      button {
        display: inline-flex;
        align-items: center;
        gap: 0.4em;
        min-height: var(--touch);
        padding: 0 0.3em;
      }
      svg {
        height: 0.95em;
        width: auto;
        stroke: var(--ink);
        stroke-linecap: round;
        stroke-width: 9;
        fill: none;
      }
      .here {
        stroke-width: 3;
      }
      .none {
        stroke: var(--pencil);
        stroke-width: 5;
        stroke-dasharray: 4 12;
      }
    `,
  ];

  @property({ type: Number }) done = 0;
  /** How many of them the hub has. */
  @property({ type: Number }) kept = 0;
  @property({ type: Number }) pieces = 0;
  /** What one piece is called. */
  @property() piece = '';

  protected override draw() {
    const label = this.words.countOne(this.piece, this.done, this.pieces);
    return html`<button
      data-quick
      aria-label=${label}
      ?disabled=${this.done >= this.pieces}
      @click=${() => this.tell('count', this.done + 1)}
    >
      ${this.#strokes()}<span>${this.done}</span>
    </button>`;
  }

  #strokes() {
    const groups = Math.ceil(this.done / 5);
    if (groups > MOST_GROUPS) return null;
    const drawn = this.done === 0 ? [0] : Array.from({ length: groups }, (_, group) => group * 5);
    return drawn.map((from) => {
      const many = Math.min(5, this.done - from);
      const wide = many === 5 ? 4.6 * STROKE : Math.max(1, many) * STROKE;
      const strokes = Array.from({ length: many }, (_, i) => this.#stroke(from + i, i));
      const first = svg`<path class="none" d="M10 8v54" />`;
      return html`<svg viewBox="0 0 ${wide} ${HIGH}" aria-hidden="true">
        ${this.done === 0 ? first : strokes}
      </svg>`;
    });
  }

  /** Each drawn a little askew, as a hand does, and always the same. */
  #stroke(number: number, place: number) {
    const x = 10 + place * STROKE;
    const lean = ((number * 7) % 5) - 2;
    const path =
      place === 4 ? `M2 ${52 + lean}L92 ${16 - lean}` : `M${x} ${8 + lean}l${lean / 2} 54`;
    return svg`<path class=${number < this.kept ? '' : 'here'} d=${path} />`;
  }
}
