import { html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { classMap } from 'lit/directives/class-map.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type {
  CookDrawing,
  LaidOut,
  LoadDrawing,
  Mark,
  PitRule,
  RackDrawing,
  SmokerDrawing,
} from '../../shared/view/index.ts';
import { layOut, loadMark } from '../../shared/view/index.ts';
import {
  clockRange,
  clockTime,
  countPieces,
  pitWords,
  saySlot,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './cook-fan.ts';
import { Part } from './part.ts';
import { pieceOutline } from './piece-outline.ts';
import { kindsOf, nameOf, nextOf, type RackKind } from './rack-kinds.ts';
import { rackLaneStyles } from './rack-lane.css.ts';
import './range-rule.ts';
import { styled } from './styled.ts';

/** A row behind the first is drawn so much further up and along. */
const BEHIND_MM = { x: 13, y: 9 };
const HIGH_MM = 122;

/** A load as a finger picks it. */
export type Picked = Pick<LoadDrawing, 'stay' | 'need'>;

export const isSame = (a: Picked, b: Picked) => a.stay === b.stay && a.need === b.need;

/** How long the whole lane of a rack is, in metres of rack: the longest of them. */
export const laneM = (smokers: readonly Pick<SmokerDrawing, 'racks'>[]): number =>
  Math.max(0.1, ...smokers.flatMap(({ racks }) => racks.map(({ lengthM }) => lengthM)));

/**
 * One rack as a shelf: its pieces at true scale where they lie; under it, for each kind of them,
 * how many, how hot, what is next done to them when, and that on the hours which all racks share.
 * Tells `pick` with a load, and `goal` with the slot while one is picked.
 */
@customElement('rack-lane')
export class RackLane extends Part {
  static override styles = [base, rackLaneStyles];

  @property({ attribute: false }) rack: RackDrawing | null = null;
  /** @see laneM of all that is drawn beside it, so that all is drawn to one scale. */
  @property({ type: Number }) laneM = 1;
  @property({ attribute: false }) rule: PitRule | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ attribute: false }) marks: ReadonlyMap<string, Mark> = new Map();
  @property({ attribute: false }) picked: Picked | null = null;
  /** The picked load would go here. */
  @property({ type: Boolean }) asked = false;
  /** The page is longer than the glass: everything is as high as it likes. */
  @property({ type: Boolean, reflect: true }) narrow = false;

  protected override draw() {
    const { rack, now, say } = this;
    if (!rack) return nothing;
    const kinds = kindsOf(rack.loads, now, say);
    const isBare = rack.loads.length === 0;
    return html`<span class=${isBare ? 'label low' : 'label'}>${rack.slot.rack}</span>
      <div class=${classMap({ lane: true, none: kinds.length === 0, empty: isBare })}>
        ${isBare ? this.#free(rack) : this.#pieces(rack)}
        ${kinds.map((kind, i) => this.#kind(kind, kinds.length - 1 - i))}
        ${kinds.length === 0 ? this.#toCome(rack) : nothing} ${this.#goal(rack)}
      </div>`;
  }

  /** Whether a stretch of hours is to be seen in it; asked once it is laid out. */
  get showsHours(): boolean {
    const rules = this.renderRoot.querySelectorAll<HTMLElement>('range-rule');
    return [...rules].some((rule) => rule.offsetHeight > 0);
  }

  #free({ lengthM }: RackDrawing) {
    const width = `${(100 * lengthM) / this.laneM}%`;
    return html`<p class="words"><span class="what">${pitWords[this.say.language].free}</span></p>
      <i class="bare" ${styled({ width })}></i>`;
  }

  #toCome({ loads: [first] }: RackDrawing) {
    const { say } = this;
    if (!first) return nothing;
    const at = clockTime(first.inAt, say);
    return html`<p class="words to-come">
      <span>${at}: ${countPieces(first.pieces, first.piece, say)}</span>
      <span class="spare">${pitWords[say.language].freeTill(at)}</span>
    </p>`;
  }

  #pieces(rack: RackDrawing) {
    const laid = layOut(rack);
    const natural = `${(100 * HIGH_MM) / (this.laneM * 1000)}cqi`;
    return html`<div class="pieces" ${styled({ '--natural': natural })}>
      <div class="drawn">${this.#drawing(rack, laid)}</div>
      ${laid.map((each, i) => this.#button(each, laid[i + 1]))}
    </div>`;
  }

  #kind({ load, pieces, core, what, when, isFar }: RackKind, after: number) {
    const { say, rule, now } = this;
    return html`<div class="kind">
      <p class="words">
        <span class="what">
          <span>${pieces} ${nameOf({ pieces, piece: load.piece }, say)}</span>
          <span class="core">${core}</span>
          ${after === 0 ? this.#then() : nothing}
        </span>
        <span class="next"><span>${what}</span> ${range(when, isFar)}</span>
      </p>
      ${load.cook ? this.#cook(load.cook) : nothing}
      <div class="hours">
        <range-rule
          .say=${say}
          .rule=${rule}
          .ranges=${load.next ? [load.next] : []}
          .now=${now}
        ></range-rule>
      </div>
    </div>`;
  }

  /** What comes when all that lies here is off. */
  #then() {
    const { say } = this;
    const next = this.rack?.loads.find(({ here }) => !here);
    if (!next) return nothing;
    const many = countPieces(next.pieces, next.piece, say);
    const { thenComes } = pitWords[say.language];
    return html`<span class="spare">${thenComes(many, clockTime(next.inAt, say))}</span>`;
  }

  #cook(cook: CookDrawing) {
    const { say, now, rule } = this;
    return html`<div class="curve">
      <cook-fan small .say=${say} .cook=${cook} .now=${now} .rule=${rule}></cook-fan>
    </div>`;
  }

  #drawing(rack: RackDrawing, laid: readonly LaidOut[]) {
    const wide = this.laneM * 1000;
    const box = `0 ${-HIGH_MM} ${wide} ${HIGH_MM + 3}`;
    return html`<svg viewBox=${box} preserveAspectRatio="xMinYMax meet" aria-hidden="true">
      <defs>
        <pattern
          id="hatch"
          width="16"
          height="16"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(25)"
        >
          <rect width="16" height="16" fill="var(--ground)" stroke="none" />
          <rect width="2" height="16" fill="var(--pencil)" stroke="none" />
        </pattern>
      </defs>
      ${fromBehind(laid).map((each) => this.#load(each))}
      ${svg`<path class="shelf" d=${`M0 0H${rack.lengthM * 1000}`} />`}
    </svg>`;
  }

  #load({ load, fromM, pieceLengthM, perRow }: LaidOut) {
    const { marks, picked } = this;
    const classes = classMap({
      ghost: !load.here,
      here: marks.has(loadMark(load.stay, load.need)),
      picked: picked !== null && isSame(picked, load),
    });
    const lengthMm = pieceLengthM * 1000;
    // From the back to the front, so that what is in front hides what is behind.
    const places = Array.from({ length: load.pieces }, (_, i) => load.pieces - 1 - i);
    return svg`<g class=${classes}>${places.map((place) => {
      const row = Math.floor(place / perRow);
      const x = fromM * 1000 + (place % perRow) * lengthMm + row * BEHIND_MM.x;
      const move = `translate(${x + 4} ${-row * BEHIND_MM.y})`;
      return svg`<g transform=${move} class=${row > 0 ? 'behind' : 'front'}>
        ${pieceOutline(load.cut, lengthMm - 8)}
      </g>`;
    })}</g>`;
  }

  /** Over the pieces and their words; what follows on the rack begins the next one. */
  #button({ load, fromM }: LaidOut, next: LaidOut | undefined) {
    const share = (lengthM: number) => `${(100 * lengthM) / this.laneM}%`;
    const toM = next && next.fromM > fromM ? next.fromM : this.laneM;
    const place = { left: share(fromM), width: share(toM - fromM) };
    return html`<button
      aria-label=${this.#nameOf(load)}
      aria-pressed=${this.picked !== null && isSame(this.picked, load)}
      ${styled(place)}
      @click=${() => this.tell('pick', load)}
      @pointerdown=${(event: PointerEvent) => this.tell('grasp', { load, event })}
    ></button>`;
  }

  #nameOf(load: LoadDrawing): string {
    const { say, rack } = this;
    const words = pitWords[say.language];
    const core = load.lastCore && words.core(temperature(load.lastCore.tempC, say));
    const { next, outAt, inAt } = load;
    const at = next ? clockRange(next.lowAt, next.highAt, say) : clockTime(outAt, say);
    const when = load.here ? `${nextOf(load, say)} ${at}` : words.comesAt('', clockTime(inAt, say));
    const parts = [rack && saySlot(rack.slot, say), countPieces(load.pieces, load.piece, say)];
    return [...parts, textIn(load.batchName, say), when, core].filter(Boolean).join(', ');
  }

  #goal(rack: RackDrawing) {
    const { picked } = this;
    if (!picked || rack.loads.some((load) => isSame(load, picked))) return nothing;
    return html`<button
      class=${classMap({ goal: true, asked: this.asked })}
      data-slot=${rack.slot.id}
      aria-label=${pitWords[this.say.language].moveTo(saySlot(rack.slot, this.say))}
      @click=${() => this.tell('goal', rack.slot.id)}
    ></button>`;
  }
}

/**
 * A time, or from when to when; which half of the day leaves where the first time like it is meant.
 */
function range(when: string, isFar: boolean) {
  const [, times = when, half] = isFar ? [] : (/^(\S+–[\d:]+)( [ap]m)$/.exec(when) ?? []);
  return html`<span class="when">${times}${half && html`<span class="half">${half}</span>`}</span>`;
}

/** What is to come is drawn first, so that what is there stands before it. */
const fromBehind = (laid: readonly LaidOut[]) =>
  [...laid].sort((a, b) => Number(a.load.here) - Number(b.load.here));
