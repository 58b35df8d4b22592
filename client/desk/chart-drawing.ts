import { nothing, svg } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Instant } from '../../shared/kernel/index.ts';
import type { ChainLink, ChartBar, ChartRange, LaidBar, LaidRow } from '../../shared/view/index.ts';
import { headDrawing } from './chart-heads.ts';
import { type Label, labelsOf } from './chart-labels.ts';
import {
  acrossPx,
  BAR_SHARE,
  clampedPx,
  type Paper,
  type Place,
  placeOf,
  rangesShown,
} from './chart-paper.ts';

/** What moves with time: strokes, the chain behind the bars, now, and the names over all. */
export function sheetDrawing(
  paper: Paper,
  {
    shown,
    links,
    heightPx,
  }: {
    readonly shown: readonly LaidRow[];
    readonly links: readonly ChainLink[];
    readonly heightPx: number;
  },
) {
  const nowPx = acrossPx(paper, paper.now);
  const each = (draw: (paper: Paper, row: LaidRow) => unknown) => eachRow(shown, paper, draw);
  return svg`<defs>
      <pattern id="gone" width="9" height="9" patternUnits="userSpaceOnUse"
        patternTransform="rotate(25)"><path class="hatch" d="M1 0V9" /></pattern>
      <pattern id="instead" width="7" height="7" patternUnits="userSpaceOnUse"
        patternTransform="rotate(-40)"><path class="hatch" d="M1 0V7" /></pattern>
      <pattern id="range" width="7" height="7" patternUnits="userSpaceOnUse"
        patternTransform="rotate(25)"><path class="strong" d="M1 0V7" /></pattern>
    </defs>
    ${strokesDrawing(paper, shown, paper.drawnPx)}
    ${links.map((link) => linkDrawing(paper, link))}
    ${each(barsDrawing)}
    <path class="now" d="M${nowPx} 0V${heightPx}" />
    ${each(wordsDrawing)}`;
}

/** What stands still at the left while time is moved. */
export const headsDrawing = (paper: Paper, shown: readonly LaidRow[]) =>
  svg`${strokesDrawing(paper, shown, paper.headPx + 1)}${eachRow(shown, paper, headOnce)}`;

const eachRow = (
  shown: readonly LaidRow[],
  paper: Paper,
  draw: (paper: Paper, row: LaidRow) => unknown,
) =>
  repeat(
    shown,
    ({ row }) => row,
    (row) => draw(paper, row),
  );

const headOnce = (paper: Paper, row: LaidRow) => {
  const { headPx, doingPx, lanePx, letterPx, widthPx, now, say } = paper;
  const sizes = [headPx, doingPx, lanePx, letterPx, widthPx, row.top];
  const minute = Math.floor(now / 60_000);
  return guard([row.row, row.doing, say, minute, ...sizes], () => headDrawing(paper, row));
};

export const isOfRacks = ({ row }: LaidRow): boolean =>
  row.kind === 'rack' || row.kind === 'idleRacks';

/** The strokes under the rows, and the one between crew and smokers. */
function strokesDrawing({ lanePx }: Paper, shown: readonly LaidRow[], widePx: number) {
  const racks = shown.find(isOfRacks);
  const under = shown.map(
    ({ top, lanes }) => svg`<path class="row" d="M0 ${(top + lanes) * lanePx}H${widePx}" />`,
  );
  return svg`${under}
    ${racks ? svg`<path class="half" d="M0 ${racks.top * lanePx}H${widePx}" />` : nothing}`;
}

const barsDrawing = (paper: Paper, { top, bars }: LaidRow) =>
  svg`<g>${bars.map((laid) => barDrawing(paper, laid, top))}</g>`;

function barDrawing(paper: Paper, { bar, lane, isWouldBe }: LaidBar, top: number) {
  const place = placeOf(paper, bar, top + lane);
  const { x, y, wide, high } = place;
  const kind = [
    'bar',
    bar.work,
    bar.state,
    paper.chained.has(bar.id) && !isWouldBe ? 'chain' : '',
    isWouldBe ? 'would-be' : '',
    paper.picked === bar.id ? 'picked' : '',
  ].join(' ');
  return svg`<g class=${kind} data-task=${bar.id}>
    <rect class="paper" x=${x} y=${y} width=${wide} height=${high} />
    ${isWouldBe ? hatched('instead', place) : goneDrawing(paper, bar, place)}
    <rect class="edge" x=${x} y=${y} width=${wide} height=${high} />
    ${rangesShown(paper, bar).map((range) => rangeDrawing(paper, range, place))}
  </g>`;
}

/** What of it lies behind, hatched. */
function goneDrawing(paper: Paper, { state, endAt }: ChartBar, { x, y, wide, high }: Place) {
  if (state === 'waiting') return nothing;
  const till = state === 'done' ? endAt : Math.min(endAt, paper.now);
  const gone = Math.min(wide, Math.max(0, acrossPx(paper, till as Instant) - x));
  return hatched('gone', { x, y, wide: gone, high });
}

const hatched = (kind: 'gone' | 'instead', { x, y, wide, high }: Place) =>
  svg`<rect class=${kind} x=${x} y=${y} width=${wide} height=${high} />`;

/** Hatched from P10 to P90, heavy at P50. */
function rangeDrawing(
  paper: Paper,
  { lowAt, at, highAt }: ChartRange,
  { y, high }: Pick<Place, 'y' | 'high'>,
) {
  const [low, mid, top] = [lowAt, at, highAt].map((each) => clampedPx(paper, each)) as [
    number,
    number,
    number,
  ];
  const half = high / 2;
  return svg`<rect class="range" x=${low} y=${y + half} width=${top - low} height=${half} />
    <path class="mid" d="M${mid} ${y + half * 0.7}V${y + high}" />`;
}

/** The names over the bars of a row: no line goes through one. */
const wordsDrawing = (paper: Paper, row: LaidRow) =>
  svg`<g>${labelsOf(paper, row).map((label) => wordDrawing(paper, label))}</g>`;

/** So much of the edges stays below a word over them: how many it names. */
const TICK_PX = 7;

function wordDrawing({ lanePx, letterPx, picked }: Paper, label: Label) {
  const { words, x, lane, bar, isLone, isInside, widePx } = label;
  const kind = ['word', bar.state, isInside && isLone && picked === bar.id ? 'picked' : ''];
  const y = (lane + 0.5) * lanePx;
  const high = lanePx * BAR_SHARE;
  // Over a run of bars it has paper of its own: of their edges only what is below the word is seen.
  const paper = svg`<rect class="names" x=${x - 3} y=${y - high / 2 + 1}
    width=${widePx + 6} height=${high - TICK_PX} />`;
  return svg`${isInside && !isLone ? paper : nothing}
    <text class=${kind.join(' ')} x=${x} y=${y + letterPx * 0.35}
      data-task=${isLone ? bar.id : nothing}>${words}</text>`;
}

/** Nearer than this, bars of a chain touch, and need no stroke between them. */
const TOUCH_PX = 6;

/**
 * The chain's stroke from the end of a bar to the start of the next: along the edge of the row,
 * where no bar lies, and behind the bars of the rows between.
 */
function linkDrawing(paper: Paper, { from, to }: ChainLink) {
  const { lanePx } = paper;
  const [x1, x2] = [clampedPx(paper, from.bar.endAt), clampedPx(paper, to.bar.startAt)];
  if (from.lane === to.lane && Math.abs(x2 - x1) < TOUCH_PX) return nothing;
  const isUp = to.lane < from.lane;
  const edge = (isUp ? from.lane : from.lane + 1) * lanePx;
  const [y1, y2] = [from.lane, to.lane].map((lane) => (lane + 0.5) * lanePx);
  return svg`<path class="link" d="M${x1} ${y1}V${edge}H${x2}V${y2}" />`;
}
