import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant, minutes } from '../../shared/kernel/index.ts';
import {
  countPieces,
  durationWords,
  pitWords,
  sayOffer,
  sayRefusal,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import { base } from '../theme/index.ts';
import type { Move } from './move-flow.ts';
import type { Might } from './what-if.ts';
import '../parts/choice-strip.ts';
import '../parts/cook-fan.ts';
import { Part } from '../parts/part.ts';

/** By how much sooner a load that waits may be asked to go in; programs may ask for any. */
const EARLIER_MIN = [15, 45];

/**
 * What a move does, in words, and the two boxes: take it, leave it. Tells `take`, `leave`, `core`
 * and `might`.
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
        line-height: 1.1;
      }
      p:first-child {
        font-weight: 800;
      }
      /* On the whole width of a wall words go before the picture. */
      @media (width >= 60em) {
        :host(:not([narrow])) [role='status'] {
          flex: 1 0 15.5em;
        }
      }
      /* Two rows of boxes are as high as the foot, and leave the picture its width. */
      choice-strip {
        flex: none;
        display: grid;
        grid-template-columns: repeat(2, auto);
      }
      :host([narrow]) choice-strip {
        display: flex;
      }
      cook-fan {
        flex: 1 1 14em;
        align-self: stretch;
        min-width: 0;
        min-height: 0;
      }
      :host([narrow]) cook-fan {
        flex: none;
        height: calc(110px * var(--arcmin));
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

  /** What the hub said would come of the last thing that was asked. */
  @property({ attribute: false }) said: readonly string[] = [];

  protected override draw() {
    const { move } = this;
    const words = pitWords[this.say.language];
    if (move.kind === 'none') return null;
    const leave = {
      label: this.words.leaveIt,
      choose: () => this.tell('leave', null),
      leaves: true,
    };
    const own: readonly Choice[] = {
      picked: [...this.#core(move.load), ...this.#mights(move.load)],
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

  /** Only what is in the fire has a core to read. */
  #core(load: Extract<Move, { load: unknown }>['load']): Choice[] {
    if (!load.here) return [];
    return [
      { label: pitWords[this.say.language].coreReading, choose: () => this.tell('core', load) },
    ];
  }

  /** The whole cook of what is picked. */
  #cook({ cook }: Extract<Move, { load: unknown }>['load']) {
    // What would come of something is more to read, and the picture is of what is.
    if (!cook || this.said.length > 0) return null;
    return html`<cook-fan .say=${this.say} .cook=${cook} .now=${this.now}></cook-fan>`;
  }

  /** What may be asked about a load that waits, or is foreseen, before anybody does it. */
  #mights(load: Extract<Move, { load: unknown }>['load']): Choice[] {
    const { say } = this;
    const words = pitWords[say.language];
    const might = (of: Might) => () => this.tell('might', { load, might: of });
    if (!load.here) {
      return EARLIER_MIN.map((by) => ({
        label: words.inEarlier(durationWords(minutes(by))),
        choose: might({ earlierByMin: by }),
      }));
    }
    if (!load.cook) return [];
    const by = say.temperature === '°F' ? '15 °F' : '8 °C';
    const hotter = { label: words.fireHotter(by), choose: might({ fireByF: 15 }) };
    const wrap = { label: words.wrapNow, choose: might({ wrapNow: 'foil' }) };
    return load.cook.wrappedAt === null ? [hotter, wrap] : [hotter];
  }

  #said(move: Exclude<Move, { kind: 'none' }>): readonly string[] {
    const { say } = this;
    const words = pitWords[say.language];
    const { load } = move;
    const core = load.lastCore && words.core(temperature(load.lastCore.tempC, say));
    const what = [countPieces(load.pieces, load.piece, say), textIn(load.batchName, say), core];
    const head = what.filter(Boolean).join(', ');
    switch (move.kind) {
      case 'picked':
        return this.said.length > 0 ? this.said : [head, words.whereTo];
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
