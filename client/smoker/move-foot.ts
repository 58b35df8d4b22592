import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import {
  countPieces,
  sayOffer,
  sayRefusal,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import { base } from '../theme/index.ts';
import type { Move } from './move-flow.ts';
import '../parts/choice-strip.ts';
import '../parts/cook-fan.ts';
import { Part } from '../parts/part.ts';

/**
 * What a move does, in words, and the two boxes: take it, leave it. Tells `take`, `leave` and
 * `core`.
 */
@customElement('move-foot')
export class MoveFoot extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: var(--edge);
        padding: calc(6px * var(--arcmin)) var(--edge);
        font-size: var(--small);
        font-weight: 700;
        line-height: 1.2;
      }
      p:first-child {
        font-weight: 800;
      }
      choice-strip {
        flex: none;
      }
      cook-fan {
        flex: 1 1 auto;
        align-self: stretch;
        min-height: calc(70px * var(--arcmin));
      }
      :host([narrow]) {
        flex-direction: column;
        align-items: stretch;
        gap: var(--gap);
      }
    `,
  ];

  @property({ attribute: false }) move: Move = { kind: 'none' };
  @property({ type: Number }) now: Instant = instant(0);
  @property({ type: Boolean, reflect: true }) narrow = false;

  protected override draw() {
    const { move, words } = this;
    if (move.kind === 'none') return null;
    const leave = { label: words.leaveIt, choose: () => this.tell('leave', null), leaves: true };
    const own: readonly Choice[] = {
      picked: [{ label: words.coreReading, choose: () => this.tell('core', move.load) }],
      offered: [{ label: words.takeIt, choose: () => this.tell('take', null), takes: true }],
      asking: [],
      refused: [],
      unheard: [],
    }[move.kind];
    const said = this.#said(move).map((sentence) => html`<p>${sentence}</p>`);
    return html`<div role="status">${said}</div>
      ${this.#cook(move.load)}
      <choice-strip
        .say=${this.say}
        .name=${words.whereTo}
        .choices=${[...own, leave]}
      ></choice-strip>`;
  }

  /** The whole cook of what is picked. */
  #cook({ cook }: Extract<Move, { load: unknown }>['load']) {
    if (!cook) return null;
    return html`<cook-fan .say=${this.say} .cook=${cook} .now=${this.now}></cook-fan>`;
  }

  #said(move: Exclude<Move, { kind: 'none' }>): readonly string[] {
    const { words, say } = this;
    const { load } = move;
    const core = load.lastCore && words.core(temperature(load.lastCore.tempC, say));
    const what = [countPieces(load.pieces, load.piece, say), textIn(load.batchName, say), core];
    const head = what.filter(Boolean).join(', ');
    switch (move.kind) {
      case 'picked':
        return [head, words.whereTo];
      case 'asking':
        return [head, words.asking];
      case 'refused':
        return [head, sayRefusal(move.refusal, say)];
      case 'unheard':
        return [head, words.cannotAsk];
      case 'offered': {
        const [moves = '', ...effects] = sayOffer(move.offer, say);
        return [moves, effects.join('; ')];
      }
    }
  }
}
