import { nothing, svg } from 'lit';
import type { Instant, TaskId } from '../../shared/kernel/index.ts';
import type {
  ChainLink,
  ChartBar,
  ChartRange,
  ChartRow,
  ChartWindow,
  LaidRow,
} from '../../shared/view/index.ts';
import { placeIn } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { deskWords, saySlot, textIn } from '../../shared/words/index.ts';

/** Where everything lies on the paper, in pixels. */
export type Paper = {
  readonly window: ChartWindow;
  /** Of the names at the left. */
  readonly namesPx: number;
  readonly widthPx: number;
  readonly lanePx: number;
  readonly now: Instant;
  /** What any service hangs on. */
  readonly chained: ReadonlySet<TaskId>;
  readonly picked: TaskId | null;
  readonly say: Say;
};

const BAR_SHARE = 0.72;
/** Of a lane's height: a letter of its words, on the average. */
const LETTER_SHARE = 0.27;

export const acrossPx = ({ window, namesPx, widthPx }: Paper, at: Instant): number =>
  namesPx + placeIn(window, at) * (widthPx - namesPx);

/** Bars reach a little over the edges, not for hours: some engines draw long strokes badly. */
const clamped = (paper: Paper, px: number): number =>
  Math.min(paper.widthPx + 20, Math.max(paper.namesPx - 20, px));

type Place = {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
};

function placeOf(paper: Paper, bar: ChartBar, lane: number): Place {
  const x = clamped(paper, acrossPx(paper, bar.startAt));
  const wide = Math.max(2, clamped(paper, acrossPx(paper, bar.endAt)) - x);
  const high = paper.lanePx * BAR_SHARE;
  return { x, y: (lane + (1 - BAR_SHARE) / 2) * paper.lanePx, wide, high };
}

/** The bars of a row, the stroke under it, and its name. */
export function rowDrawing(paper: Paper, { row, top, lanes, bars }: LaidRow) {
  const { lanePx, widthPx, namesPx, say } = paper;
  const foot = (top + lanes) * lanePx;
  return svg`<g>
    <path class="row" d="M0 ${foot}H${widthPx}" />
    ${bars.map(({ bar, lane }) => barDrawing(paper, bar, top + lane))}
    <rect class="names" y=${top * lanePx + 1} width=${namesPx} height=${lanes * lanePx - 2} />
    <text class="name" x="6" y=${(top + 0.62) * lanePx}>${nameOf(row, say)}</text>
  </g>`;
}

/** Least width of the names, in heights of a lane; and most of it, of the whole width. */
const NAMES_LEAST = 5.2;
const NAMES_MOST = 0.4;
/** Of a lane's height: a heavy letter of a name, on the average, and what is beside them. */
const NAME_LETTER_SHARE = 0.285;
const NAME_EDGE_SHARE = 0.5;

/** How much of the paper the longest name takes. */
export function namesPx(
  rows: readonly LaidRow[],
  { lanePx, widthPx }: Pick<Paper, 'lanePx' | 'widthPx'>,
  say: Say,
): number {
  const longest = Math.max(0, ...rows.map(({ row }) => nameOf(row, say).length));
  const lanes = Math.max(NAMES_LEAST, longest * NAME_LETTER_SHARE + NAME_EDGE_SHARE);
  return Math.min(widthPx * NAMES_MOST, lanePx * lanes);
}

function nameOf(row: ChartRow, say: Say): string {
  if (row.kind === 'rack') return saySlot(row.slot, say);
  const { name, isOut } = row.person;
  return isOut ? deskWords[say.language].isOut(name) : name;
}

function barDrawing(paper: Paper, bar: ChartBar, lane: number) {
  const place = placeOf(paper, bar, lane);
  const { x, y, wide, high } = place;
  const kind = [
    'bar',
    bar.work,
    bar.state,
    paper.chained.has(bar.id) ? 'chain' : '',
    paper.picked === bar.id ? 'picked' : '',
  ].join(' ');
  return svg`<g class=${kind} data-task=${bar.id}>
    <rect class="paper" x=${x} y=${y} width=${wide} height=${high} />
    ${goneDrawing(paper, bar, place)}
    <rect class="edge" x=${x} y=${y} width=${wide} height=${high} />
    ${wordDrawing(paper, bar, place)}
    ${rangesShown(paper, bar).map((range) => rangeDrawing(paper, range, place))}
  </g>`;
}

/** A hand's minutes of doubt only where somebody looks: at what runs, and at what is picked. */
function rangesShown({ picked }: Paper, { id, work, state, ranges }: ChartBar) {
  if (state === 'done') return [];
  return work === 'hands' && state === 'waiting' && picked !== id ? [] : ranges;
}

/** What of it lies behind, hatched. */
function goneDrawing(paper: Paper, { state, endAt }: ChartBar, { x, y, wide, high }: Place) {
  if (state === 'waiting') return nothing;
  const till = state === 'done' ? endAt : Math.min(endAt, paper.now);
  const gone = Math.min(wide, Math.max(0, acrossPx(paper, till as Instant) - x));
  return svg`<rect class="gone" x=${x} y=${y} width=${gone} height=${high} />`;
}

function wordDrawing(paper: Paper, { title }: ChartBar, { x, y, wide, high }: Place) {
  // What began before the window has its word at the window's edge.
  const from = Math.max(x, paper.namesPx);
  const room = x + wide - from - 7;
  const words = wordsIn(textIn(title, paper.say), room / (LETTER_SHARE * paper.lanePx));
  if (words === '') return nothing;
  return svg`<svg x=${from + 5} y=${y} width=${room} height=${high}>
    <text y=${high * 0.7}>${words}</text>
  </svg>`;
}

/** As many whole words from the first on as so many letters hold. */
function wordsIn(title: string, letters: number): string {
  if (title.length <= letters) return title;
  const end = title.lastIndexOf(' ', Math.floor(letters));
  return end > 0 ? title.slice(0, end) : '';
}

/** Hatched from P10 to P90, heavy at P50. */
function rangeDrawing(paper: Paper, { lowAt, at, highAt }: ChartRange, { y, high }: Place) {
  const [low, mid, top] = [lowAt, at, highAt].map((each) =>
    clamped(paper, acrossPx(paper, each)),
  ) as [number, number, number];
  const half = high / 2;
  return svg`<rect class="range" x=${low} y=${y + half} width=${top - low} height=${half} />
    <path class="mid" d="M${mid} ${y + half * 0.7}V${y + high}" />`;
}

/** The chain's strokes from the end of each bar to the start of the next. */
export function linkDrawing(paper: Paper, { from, to }: ChainLink) {
  const [x1, x2] = [from.bar.endAt, to.bar.startAt].map((at) =>
    clamped(paper, acrossPx(paper, at)),
  );
  const [y1, y2] = [from.lane, to.lane].map((lane) => (lane + 0.5) * paper.lanePx);
  return svg`<path class="link" d="M${x1} ${y1}H${x2}V${y2}" />`;
}
