import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Seconds, seconds } from '../../shared/kernel/index.ts';
import type { StandardMove } from '../../shared/view/index.ts';
import { handsTime, standardWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

const SECOND_MS = 1_000;

/**
 * What the hands do to one piece, in order. Whoever learns ticks move after move and sees how long
 * each took beside what is usual; nothing of it is kept.
 */
@customElement('cut-training')
export class CutTraining extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
      }
      ol {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 0 var(--gap);
        align-items: baseline;
        padding: 0.3em 0;
        border-bottom: var(--hair) solid var(--pencil);
      }
      li.done {
        color: var(--soft);
      }
      .mind {
        grid-column: 1;
        color: var(--soft);
        font-weight: 500;
      }
      button {
        min-height: var(--touch);
        min-width: var(--touch);
        border: var(--line) solid var(--ink);
        padding: 0 0.6em;
        text-align: center;
      }
      li button {
        grid-column: 2;
        justify-self: end;
      }
      .time {
        font-variant-numeric: tabular-nums;
        text-align: end;
      }
      h3 {
        display: flex;
        justify-content: space-between;
        align-items: baseline;
        gap: var(--gap);
        font-weight: 800;
        border-bottom: var(--line) solid var(--ink);
      }
      h3 span {
        color: var(--soft);
        font-weight: 500;
        text-align: end;
      }
      .foot {
        display: flex;
        align-items: center;
        gap: var(--gap);
        margin-top: var(--gap);
      }
      @media print {
        .foot {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) moves: readonly StandardMove[] = [];
  /** When each tick fell; the first is the start. Null: the watch does not run. */
  @state() private ticks: readonly number[] | null = null;
  @state() private nowMs = 0;

  #watch: ReturnType<typeof setInterval> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.#watch);
  }

  protected override draw() {
    const { moves, ticks } = this;
    if (moves.length === 0) return nothing;
    const said = standardWords[this.say.language];
    const done = ticks ? ticks.length - 1 : 0;
    const isOver = ticks !== null && done === moves.length;
    const took = isOver ? said.took(handsTime(spanS(ticks, 0, done))) : null;
    return html`<h3>${said.byHand} <span>${said.usual}</span></h3>
      <ol>
        ${moves.map((move, i) => this.#move(move, i, done))}
      </ol>
      <div class="foot">
        <button @click=${ticks ? this.#stop : this.#start}>
          ${ticks === null ? said.train : isOver ? said.again : said.stopTraining}
        </button>
        ${took ? html`<b class="time">${took}</b>` : nothing}
      </div>`;
  }

  #move({ title, mind, pieceS }: StandardMove, i: number, done: number) {
    const { say, ticks } = this;
    const said = standardWords[say.language];
    const usual = pieceS === null ? '' : handsTime(pieceS);
    const isNext = ticks !== null && i === done;
    const took =
      ticks === null || i > done
        ? usual
        : i < done
          ? said.took(handsTime(spanS(ticks, i, i + 1)))
          : handsTime(seconds((this.nowMs - (ticks[i] ?? this.nowMs)) / SECOND_MS));
    return html`<li class=${ticks && i < done ? 'done' : ''}>
      <b>${textIn(title, say)}</b>
      <span class="time">${took}</span>
      ${mind ? html`<span class="mind">${textIn(mind, say)}</span>` : nothing}
      ${isNext ? html`<button @click=${this.#tick}>${said.tick}</button>` : nothing}
    </li>`;
  }

  #start = () => {
    this.nowMs = Date.now();
    this.ticks = [this.nowMs];
    clearInterval(this.#watch);
    this.#watch = setInterval(() => {
      this.nowMs = Date.now();
    }, SECOND_MS);
  };

  #tick = () => {
    this.nowMs = Date.now();
    this.ticks = [...(this.ticks ?? []), this.nowMs];
    if (this.ticks.length > this.moves.length) clearInterval(this.#watch);
  };

  #stop = () => {
    clearInterval(this.#watch);
    const isOver = this.ticks !== null && this.ticks.length > this.moves.length;
    if (isOver) this.#start();
    else this.ticks = null;
  };
}

function spanS(ticks: readonly number[], from: number, to: number): Seconds {
  return seconds(((ticks[to] ?? 0) - (ticks[from] ?? 0)) / SECOND_MS);
}
