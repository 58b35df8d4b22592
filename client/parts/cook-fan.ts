import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { CookDrawing, CookLines, PitRule } from '../../shared/view/index.ts';
import { cookLines } from '../../shared/view/index.ts';
import { pitWords, temperature } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';
import { styled } from './styled.ts';

/** In units of its own; a picture is stretched to its place, its strokes are not. */
const WIDE = 300;
const HIGH = 100;

/**
 * The cook of a load: what its core has shown as dots on a line, what it may show as a hatched fan
 * about its middle, a line for each target with its range, where it was wrapped, a notch below for
 * each time that its door was opened, and now in brick.
 */
@customElement('cook-fan')
export class CookFan extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-rows: minmax(0, 1fr);
        min-height: 0;
      }
      div {
        display: grid;
        position: relative;
        min-height: 0;
      }
      svg {
        width: 100%;
        height: 100%;
        min-height: 0;
        overflow: visible;
        fill: none;
        stroke: var(--ink);
      }
      path,
      line {
        vector-effect: non-scaling-stroke;
        stroke-width: var(--line);
      }
      .fan {
        fill: var(--ink);
        fill-opacity: 0.16;
        stroke: none;
      }
      .middle {
        stroke-dasharray: 6 4;
      }
      .core,
      .range {
        stroke-width: var(--heavy);
      }
      .target {
        stroke-width: max(1px, calc(var(--line) * 0.55));
      }
      .wrapped {
        stroke-dasharray: 2 3;
      }
      .opened {
        stroke-width: var(--heavy);
      }
      .now {
        stroke: var(--brick);
        stroke-width: var(--heavy);
      }
      span {
        position: absolute;
        left: 0;
        font-size: calc(var(--small) * 0.75);
        font-weight: 700;
        line-height: 1;
        padding-right: 0.3em;
        background: var(--ground);
        transform: translateY(-50%);
      }
      /* Room over the highest line for its figure, which stands where the curve is not. */
      :host([small]) div {
        margin-top: 1.1em;
      }
      :host([small]) span {
        font-size: var(--small);
        transform: translateY(-100%);
      }
      :host([small]) .passed {
        left: auto;
        right: 0;
        padding: 0;
        background: none;
      }
      small {
        font-size: 0.75em;
        font-weight: 700;
      }
    `,
  ];

  @property({ attribute: false }) cook: CookDrawing | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  /** Over the hours of a rack's rule, which has now and the times: its own are the temperatures. */
  @property({ attribute: false }) rule: PitRule | null = null;
  @property({ type: Boolean, reflect: true }) small = false;

  protected override draw() {
    const { cook, small } = this;
    const { notCalibrated } = pitWords[this.say.language];
    if (!cook) return nothing;
    const lines = cookLines(cook, this.now, this.small ? this.rule : null);
    const shown = this.small ? apart(lines.targets) : lines.targets;
    const box = `0 0 ${WIDE} ${HIGH}`;
    return html`<div>
        <svg viewBox=${box} preserveAspectRatio="none" aria-hidden="true">
        ${svg`<path class="fan" d=${`${pathOf(lines.fan)}Z`} />
        <path class="middle" d=${pathOf(lines.middle)} />`}
        ${lines.targets.map(targetLine)}
        ${lines.wrapped === null ? nothing : upright('wrapped', lines.wrapped)}
        ${lines.opened.map((x) => svg`<path class="opened" d=${notchAt(x)} />`)}
        ${svg`<path class="core" d=${pathOf(lines.cores)} />`}
        ${this.small ? nothing : upright('now', lines.now)}
      </svg>
      ${shown.map((target) => this.#label(target))}
      </div>
      ${small || cook.isCalibrated ? nothing : html`<small>${notCalibrated}</small>`}`;
  }

  #label({ y, tempC, isPassed }: Target) {
    const top = `${(100 * y).toFixed(1)}%`;
    const said = temperature(tempC, this.say);
    return html`<span class=${isPassed ? 'passed' : ''} ${styled({ top })}>${said}</span>`;
  }
}

type Target = CookLines['targets'][number];

/** Of the height: figures nearer than this would stand in one another. */
const APART = 0.4;

/** What is still to come first; of what is too near to it the figure is left out. */
const apart = (targets: readonly Target[]): Target[] =>
  [...targets]
    .sort((a, b) => Number(a.isPassed) - Number(b.isPassed))
    .filter(({ y }, i, all) => all.slice(0, i).every((other) => Math.abs(other.y - y) > APART));

const at = (x: number, y: number) => `${(x * WIDE).toFixed(1)} ${(y * HIGH).toFixed(1)}`;

const pathOf = (points: readonly (readonly [number, number])[]) =>
  points.length === 0 ? 'M0 0' : `M${points.map(([x, y]) => at(x, y)).join('L')}`;

const upright = (kind: string, x: number) =>
  svg`<path class=${kind} d=${`M${at(x, 0)}L${at(x, 1)}`} />`;

const notchAt = (x: number) => `M${at(x, 1)}L${at(x, 0.9)}`;

const strokeAt = (x: number, y: number) => `M${at(x, y - 0.05)}L${at(x, y + 0.05)}`;

function targetLine({ y, low, mid, high }: Target) {
  const [from, to] = [low ?? 1, high ?? 1];
  return svg`<path class="target" d=${`M${at(0, y)}L${at(1, y)}`} />
    <path class="range" d=${`M${at(from, y)}L${at(to, y)}`} />
    ${mid === null ? nothing : svg`<path class="range" d=${strokeAt(mid, y)} />`}`;
}
