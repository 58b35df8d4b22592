import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  type CutStandard,
  type Drawing,
  SHEET,
  type StandardPart,
} from '../../shared/view/index.ts';
import { textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

/** Half the side of the clear square that a figure stands on. */
const CLEAR = 12;

/**
 * A cut in line art: what comes off is hatched and bounded by the way of the knife, and every part
 * has the figure that it has in the words beside it.
 */
@customElement('cut-drawing')
export class CutDrawing extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        min-height: 0;
      }
      svg {
        display: block;
        width: 100%;
        height: 100%;
        fill: none;
        stroke: var(--ink);
        stroke-linejoin: round;
      }
      .outline {
        stroke-width: 2.6;
      }
      .line {
        stroke: var(--pencil);
        stroke-width: 1.3;
      }
      .off {
        fill: url(#hatch);
        stroke-width: 1.3;
      }
      .knife {
        stroke-width: 3;
        stroke-dasharray: 10 6;
      }
      .leader {
        stroke-width: 1;
      }
      rect {
        fill: var(--ground);
        stroke: none;
      }
      text {
        fill: var(--ink);
        stroke: none;
        font: 800 20px 'Atkinson Hyperlegible Next Variable', sans-serif;
        text-anchor: middle;
      }
    `,
  ];

  @property({ attribute: false }) standard: CutStandard | null = null;

  protected override draw() {
    const { standard } = this;
    if (!standard?.drawing) return nothing;
    const { drawing, off, stays } = standard;
    return html`<svg
      viewBox="0 0 ${SHEET.width} ${SHEET.height}"
      role="img"
      aria-label=${textIn(standard.name, this.say)}
    >
      <defs>
        <pattern
          id="hatch"
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(25)"
        >
          <path d="M0 0V8" stroke="var(--pencil)" stroke-width="1.4" />
        </pattern>
      </defs>
      ${off.map((part) => outlineOf(part, drawing))}
      <path class="outline" d=${drawing.outline} />
      ${drawing.lines.map((line) => svg`<path class="line" d=${line} />`)}
      ${off.map((part) => knifeOf(part, drawing))}
      ${[...off, ...stays].map((part) => figureOf(part, drawing))}
    </svg>`;
  }
}

const drawnOf = ({ part }: StandardPart, { parts }: Drawing) =>
  part === null ? undefined : parts[part];

function outlineOf(part: StandardPart, drawing: Drawing) {
  const drawn = drawnOf(part, drawing);
  return drawn ? svg`<path class="off" d=${drawn.path} />` : nothing;
}

function knifeOf(part: StandardPart, drawing: Drawing) {
  const cut = drawnOf(part, drawing)?.cut;
  return cut ? svg`<path class="knife" d=${cut} />` : nothing;
}

function figureOf(part: StandardPart, drawing: Drawing) {
  const drawn = drawnOf(part, drawing);
  if (!drawn) return nothing;
  const { at, figureAt } = drawn;
  return svg`<path class="leader" d="M${at.x} ${at.y}L${figureAt.x} ${figureAt.y}" />
    <rect x=${figureAt.x - CLEAR} y=${figureAt.y - CLEAR} width=${2 * CLEAR} height=${2 * CLEAR} />
    <text x=${figureAt.x} y=${figureAt.y + 7}>${part.figure}</text>`;
}
