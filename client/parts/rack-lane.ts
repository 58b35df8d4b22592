import { html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { classMap } from 'lit/directives/class-map.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type {
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
  nearClock,
  nearRange,
  type Say,
  saySlot,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './cook-fan.ts';
import { Part } from './part.ts';
import { pieceOutline } from './piece-outline.ts';
import { rackLaneStyles } from './rack-lane.css.ts';
import './range-rule.ts';
import { styled } from './styled.ts';

/** A row behind the first is drawn so much further up and along. */
const BEHIND_MM = { x: 13, y: 9 };
const HIGH_MM = 122;

/** A load as a finger picks it. */
export type Picked = Pick<LoadDrawing, 'stay' | 'need'>;

export const isSame = (a: Picked, b: Picked) => a.stay === b.stay && a.need === b.need;

/** Of a lane, over the end of its shelf: as wide as its style has it. */
const CURVE_SHARE = 0.27;

/**
 * How long the whole lane of a rack is, in metres of rack: the longest of them, and room beside its
 * pieces for the curve of a cook where there is any.
 */
export function laneM(smokers: readonly Pick<SmokerDrawing, 'racks'>[]): number {
  const racks = smokers.flatMap((smoker) => smoker.racks);
  const longestM = Math.max(0.1, ...racks.map(({ lengthM }) => lengthM));
  const hasCurve = racks.some(({ loads }) => loads.some(({ here, cook }) => here && cook));
  return hasCurve ? longestM / (1 - CURVE_SHARE) : longestM;
}

/** What a time takes in letters of a usual width: a figure is wider, and an m takes two. */
const lettersOf = (when: string) => 1.15 * when.length + 1.5 * (when.match(/[ap]m/g)?.length ?? 0);

/**
 * One rack as a shelf: its pieces at true scale where they lie, when each is next wanted, what
 * comes after. Tells `pick` with a load, and `goal` with the slot while one is picked.
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

  protected override draw() {
    const { rack } = this;
    if (!rack) return nothing;
    const laid = layOut(rack);
    const here = rack.loads.filter((load) => load.here);
    const ranges = here.flatMap(({ next }) => (next ? [next] : []));
    return html`<span class="label">${rack.slot.rack}</span>
      <div class="lane">
        ${this.#words(rack)} ${this.#drawing(rack, laid)} ${this.#cook(here[0])}
        <range-rule
          .say=${this.say}
          .rule=${rack.loads.length > 0 ? this.rule : null}
          .ranges=${ranges}
          .now=${this.now}
        ></range-rule>
        ${laid.map((each, i) => this.#button(each, laid[i + 1]))} ${this.#goal(rack)}
      </div>`;
  }

  #words({ loads }: RackDrawing) {
    const { words, say } = this;
    const [first, second] = loads;
    if (!first) return html`<p class="words"><span>${words.free}</span></p>`;
    if (!first.here) {
      const at = clockTime(first.inAt, say);
      return html`<p class="words to-come">
        <span class="counts coming">${counted(`${at}: ${first.pieces}`, nameOf(first, say))}</span>
        <span class="coming">${words.freeTill(at)}</span>
      </p>`;
    }
    const then = second && {
      many: countPieces(second.pieces, second.piece, say),
      at: clockTime(second.inAt, say),
    };
    const { what, when } = this.#shortNext(first);
    const counts = this.#counts(loads.filter(({ here }) => here));
    const letters = lettersOf(when) + counts.flat().join(' ').length + 2;
    return html`<p class="words">
      <span class="here-now">
        <span class="counts" ${styled({ '--letters': String(letters) })}>
          ${counts.map(([sum, name]) => counted(sum, name))}
        </span>
        ${
          then && !second.here
            ? html`<span class="coming">${words.thenComes(then.many, then.at)}</span>`
            : nothing
        }
      </span>
      <span class="next" ${styled({ '--letters': String(lettersOf(when)) })}>
        <span>${when}</span><span>${what}</span>
      </span>
    </p>`;
  }

  /** How many of what lie beside each other: those of one name together. */
  #counts(loads: readonly LoadDrawing[]): (readonly [string, string])[] {
    const names = [...new Set(loads.map((load) => nameOf(load, this.say)))];
    return names.map((name, i) => {
      const many = loads.filter((load) => nameOf(load, this.say) === name);
      const sum = many.map(({ pieces }) => pieces).join(' + ');
      return [i === 0 ? sum : `+ ${sum}`, name];
    });
  }

  /** What is next done to a load, and between when and when. */
  #next({ next, outAt }: LoadDrawing): { readonly what: string; readonly when: string } {
    const { say, words } = this;
    if (!next) return { what: words.off, when: clockTime(outAt, say) };
    return { what: textIn(next.title, say), when: clockRange(next.lowAt, next.highAt, say) };
  }

  /** The same for the lane: the half of the day is said where it is not the one that is now. */
  #shortNext(load: LoadDrawing): { readonly what: string; readonly when: string } {
    const { now, say } = this;
    const { next, outAt } = load;
    const when = next ? nearRange([next.lowAt, next.highAt], now, say) : nearClock(outAt, now, say);
    return { what: this.#next(load).what, when };
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

  #cook(load: LoadDrawing | undefined) {
    if (!load?.cook) return nothing;
    return html`<cook-fan small .say=${this.say} .cook=${load.cook} .now=${this.now}></cook-fan>`;
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
    const { say, words, rack } = this;
    const core = load.lastCore && words.core(temperature(load.lastCore.tempC, say));
    const { what, when: at } = this.#next(load);
    const when = load.here ? `${what} ${at}` : words.comesAt('', clockTime(load.inAt, say));
    const parts = [rack && saySlot(rack.slot, say), countPieces(load.pieces, load.piece, say)];
    return [...parts, textIn(load.batchName, say), when, core].filter(Boolean).join(', ');
  }

  #goal(rack: RackDrawing) {
    const { picked } = this;
    if (!picked || rack.loads.some((load) => isSame(load, picked))) return nothing;
    return html`<button
      class=${classMap({ goal: true, asked: this.asked })}
      data-slot=${rack.slot.id}
      aria-label=${this.words.moveTo(saySlot(rack.slot, this.say))}
      @click=${() => this.tell('goal', rack.slot.id)}
    ></button>`;
  }
}

/** A figure that stays, and what it counts, which leaves whole where it has no room. */
const counted = (figure: string, name: string) =>
  html`<span class="figure">${figure}</span><span class="name"><i></i><span>${name}</span></span>`;

/** What its pieces are called, without how many. */
const nameOf = ({ pieces, piece }: LoadDrawing, say: Say) =>
  textIn(pieces === 1 ? piece.one : piece.many, say);

/** What is to come is drawn first, so that what is there stands before it. */
const fromBehind = (laid: readonly LaidOut[]) =>
  [...laid].sort((a, b) => Number(a.load.here) - Number(b.load.here));
