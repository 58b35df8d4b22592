import { nothing, svg } from 'lit';
import type { DayChart } from '../../shared/view/index.ts';
import { ruleOf, ruleStepMin } from '../../shared/view/index.ts';
import { clockHour } from '../../shared/words/index.ts';
import { wordsPx } from './chart-letters.ts';
import { acrossPx, type Paper } from './chart-paper.ts';

/** Of the rule, in heights of a letter. */
export const RULE_LETTERS = 1.9;
/** Between two times, in heights of a letter. */
const APART_LETTERS = 1.4;

/** The hours over the chart, each whole and well apart from the next. */
export function ruleDrawing(paper: Paper, chart: DayChart, zone: string) {
  const { drawnPx, letterPx, window, now, say } = paper;
  const highPx = RULE_LETTERS * letterPx;
  const stepFor = (labelPx: number) =>
    ruleStepMin(window, drawnPx, labelPx + APART_LETTERS * letterPx);
  const [hourPx, betweenPx] = labelWidths(chart, zone, paper);
  // Times between the hours are longer: where they have no room, the hours alone may.
  const between = stepFor(betweenPx);
  const stepMin = between < 60 ? between : Math.max(60, stepFor(hourPx));
  const halfPx = (stepMin < 60 ? betweenPx : hourPx) / 2;
  const strokes = ruleOf(window, stepMin, zone);
  const shown = strokes.filter((at) => at >= window.from && at <= window.to);
  // A time that would be cut off at an edge is not written there.
  const hasRoom = (x: number) => x > halfPx && x < drawnPx - halfPx;
  const nowPx = acrossPx(paper, now);
  return svg`${shown.map((at) => {
    const x = acrossPx(paper, at);
    const word = svg`<text x=${x} y=${highPx * 0.6} text-anchor="middle">
      ${clockHour(at, say)}
    </text>`;
    return svg`<path d="M${x} ${highPx * 0.76}V${highPx}" />${hasRoom(x) ? word : nothing}`;
  })}
  <path class="now" d="M${nowPx} ${highPx * 0.76}V${highPx}" />`;
}

type Widths = readonly [hourPx: number, betweenPx: number];
type Measured = { readonly letterPx: number; readonly clock: string; readonly widths: Widths };

const known = new WeakMap<DayChart, Measured>();

/** The widest of a whole day: so that the hours keep their places when the chart is moved. */
function labelWidths(chart: DayChart, zone: string, { letterPx, say }: Paper): Widths {
  const before = known.get(chart);
  if (before?.letterPx === letterPx && before.clock === say.clock) return before.widths;
  const [hourPx = 0, betweenPx = 0] = [60, 30].map((stepMin) =>
    Math.max(...ruleOf(chart, stepMin, zone).map((at) => wordsPx(clockHour(at, say), letterPx))),
  );
  const measured = { letterPx, clock: say.clock, widths: [hourPx, betweenPx] as const };
  known.set(chart, measured);
  return measured.widths;
}
