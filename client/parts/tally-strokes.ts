import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type Tally, type TaskView, tallyOf } from '../../shared/view/index.ts';
import { textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

const STROKE = 22;
const HIGH = 70;
/** More groups than these are read as a number only; where there is little room. */
const MOST_GROUPS = 6;
const MOST_IN_BRIEF = 1;

/**
 * Work done, as strokes in fives with the fifth across, one for each piece or each tray of them,
 * and beside it the pieces, of all there are. A tap adds one; strokes that the hub does not have
 * yet are drawn thin.
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
      small {
        font-size: var(--small);
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

  @property({ attribute: false }) task: TaskView | null = null;
  /** How many pieces the hub knows of. */
  @property({ type: Number }) kept = 0;
  @property({ type: Boolean }) brief = false;

  protected override draw() {
    const { task, words } = this;
    if (!task) return nothing;
    const { pieces, counted, trayHolds, piece } = task;
    const tally = tallyOf(task, this.kept);
    const { strokes, next } = tally;
    const one = trayHolds ? words.trayOf(next - counted) : textIn(piece.one, this.say);
    return html`<button
      data-quick
      aria-label=${words.countOne(one, counted, pieces)}
      ?disabled=${counted >= pieces}
      @click=${() => this.tell('count', next)}
    >
      ${this.#strokes(tally)}<span>${counted}/${pieces}</span>
      ${trayHolds && strokes > 0 ? html`<small>${words.trays(strokes)}</small>` : nothing}
    </button>`;
  }

  #strokes({ strokes: done, keptStrokes }: Tally) {
    const groups = Math.ceil(done / 5);
    if (groups > (this.brief ? MOST_IN_BRIEF : MOST_GROUPS)) return null;
    const drawn = done === 0 ? [0] : Array.from({ length: groups }, (_, group) => group * 5);
    return drawn.map((from) => {
      const many = Math.min(5, done - from);
      const wide = many === 5 ? 4.6 * STROKE : Math.max(1, many) * STROKE;
      const strokes = Array.from({ length: many }, (_, i) =>
        this.#stroke(from + i, i, from + i < keptStrokes),
      );
      const first = svg`<path class="none" d="M10 8v54" />`;
      return html`<svg viewBox="0 0 ${wide} ${HIGH}" aria-hidden="true">
        ${done === 0 ? first : strokes}
      </svg>`;
    });
  }

  /** Each drawn a little askew, as a hand does, and always the same. */
  #stroke(number: number, place: number, isKept: boolean) {
    const x = 10 + place * STROKE;
    const lean = ((number * 7) % 5) - 2;
    const path =
      place === 4 ? `M2 ${52 + lean}L92 ${16 - lean}` : `M${x} ${8 + lean}l${lean / 2} 54`;
    return svg`<path class=${isKept ? '' : 'here'} d=${path} />`;
  }
}
