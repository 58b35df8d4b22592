import type { ChartBar, LaidRow } from '../../shared/view/index.ts';
import { fitting, shorter, wordsPx } from './chart-letters.ts';
import { acrossPx, type Paper, rangesShown, titleOf } from './chart-paper.ts';

/** A name on the chart: in its bar, beside one too narrow, or over a run of such. */
export type Label = {
  readonly words: string;
  readonly x: number;
  /** From the top of the chart. */
  readonly lane: number;
  /** The first of the bars that it names, and whether it names no other. */
  readonly bar: ChartBar;
  readonly isLone: boolean;
  readonly isInside: boolean;
  readonly widePx: number;
};

/** Between a bar's edge and a word. */
const GAP_PX = 5;
/** A word ends so far before the next bar: it is not that one's. */
const CLEAR_PX = 9;
/** Nearer than this, bars are one run to the eye. */
const JOIN_PX = 6;

type Item = {
  readonly bar: ChartBar;
  readonly x: number;
  readonly end: number;
  readonly titles: readonly string[];
  /** What of its title it holds. */
  readonly held: string | undefined;
};

/** The names of what is shown of a row. */
export function labelsOf(paper: Paper, { top, lanes, bars }: LaidRow): Label[] {
  return Array.from({ length: lanes }, (_, lane) => lane).flatMap((lane) => {
    const items = bars.flatMap((laid) => (laid.lane === lane ? itemOf(paper, laid.bar) : []));
    return laneLabels(paper, items).map((label) => ({
      ...label,
      lane: top + lane,
      widePx: wordsPx(label.words, paper.letterPx),
    }));
  });
}

function itemOf(paper: Paper, bar: ChartBar): Item {
  const { seenPx, drawnPx } = paper;
  const [startPx, endPx] = [acrossPx(paper, bar.startAt), acrossPx(paper, bar.endAt)];
  const isAcross = (edgePx: number) => startPx < edgePx && endPx > edgePx;
  // What began before what is seen has its word at the edge of that.
  const x = isAcross(seenPx[0]) ? seenPx[0] : Math.max(0, startPx);
  const end = isAcross(seenPx[1]) ? seenPx[1] : Math.min(drawnPx, endPx);
  const titles = shorter(titleOf(paper, bar));
  return { bar, x, end, titles, held: fitting(titles, end - x - 2 * GAP_PX, paper.letterPx) };
}

type OnLane = Omit<Label, 'lane' | 'widePx'>;

function laneLabels(paper: Paper, items: readonly Item[]): OnLane[] {
  const labels: OnLane[] = [];
  for (let at = 0; at < items.length; ) {
    const run = runFrom(paper, items, at);
    const label = runLabel(paper, run, items[at + run.length]);
    if (label) labels.push(label);
    at += run.length;
  }
  return labels;
}

/**
 * What holds its own name stands alone; narrow ones in a row are one, where all are done or none
 * is, and a service waits for all or for none: what is drawn heavy is not covered.
 */
function runFrom({ chained }: Paper, items: readonly Item[], from: number): Item[] {
  const run = items.slice(from, from + 1);
  const isOfRun = ({ bar, x, held }: Item, last: Item | undefined) =>
    last !== undefined &&
    held === undefined &&
    x - last.end < JOIN_PX &&
    (bar.state === 'done') === (last.bar.state === 'done') &&
    chained.has(bar.id) === chained.has(last.bar.id);
  if (run[0]?.held !== undefined) return run;
  for (const item of items.slice(from + 1)) {
    if (!isOfRun(item, run.at(-1))) break;
    run.push(item);
  }
  return run;
}

function runLabel(paper: Paper, run: readonly Item[], next: Item | undefined): OnLane | null {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last || last.end <= 0) return null;
  const { bar, x, held } = first;
  const isLone = run.length === 1;
  if (held !== undefined) return { words: held, x: x + GAP_PX, bar, isLone, isInside: true };
  const titles = isLone ? first.titles : namesOf(run);
  const beside = Math.max(last.end, ...farEnds(paper, last.bar)) + GAP_PX;
  const until = next ? next.x - CLEAR_PX : paper.drawnPx - GAP_PX;
  const outside = fitting(titles, until - beside, paper.letterPx);
  const over =
    isLone || bar.state === 'done'
      ? undefined
      : fitting(titles, last.end - x - 2 * GAP_PX, paper.letterPx);
  const isInside = (over?.length ?? 0) > (outside?.length ?? 0);
  const words = isInside ? over : outside;
  if (words === undefined) return null;
  return { words, x: isInside ? x + GAP_PX : beside, bar, isLone, isInside };
}

const farEnds = (paper: Paper, bar: ChartBar): number[] =>
  rangesShown(paper, bar).map(({ highAt }) => acrossPx(paper, highAt));

/** Of a run what it is made of: its one title, or the first words of each, and fewer of them. */
function namesOf(run: readonly Item[]): readonly string[] {
  const titles = new Set(run.map(({ titles: [title] }) => title));
  if (titles.size === 1) return run[0]?.titles ?? [];
  const firsts = [...new Set(run.map(({ titles: all }) => all.at(-1) ?? ''))];
  const names = firsts.map((word, i) => (i === 0 ? word : word.toLowerCase()));
  return names.map((_, cut) => {
    const some = names.slice(0, names.length - cut).join(', ');
    return cut === 0 ? some : `${some}…`;
  });
}
