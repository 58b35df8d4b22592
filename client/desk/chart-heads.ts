import { nothing, svg } from 'lit';
import type { ChartBar, ChartRow, LaidRow } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { deskWords, nearClock, sayDayAhead, saySlot, saySlots } from '../../shared/words/index.ts';
import { cutTo, fitting, shorter, wordsPx } from './chart-letters.ts';
import { type Paper, titleOf } from './chart-paper.ts';

const EDGE_PX = 6;
/** What somebody does takes so many heights of a letter, and the whole no more than its share. */
const DOING_LETTERS = 15.5;
const HEAD_MOST = { wide: 0.36, narrow: 0.42 } as const;

/** How wide names are, and where what is done stands: beside them, or under them on a phone. */
export function headSizes(
  rows: readonly ChartRow[],
  { widthPx, letterPx, say }: Pick<Paper, 'widthPx' | 'letterPx' | 'say'>,
  isNarrow: boolean,
): Pick<Paper, 'headPx' | 'doingPx'> {
  const longest = Math.max(0, ...rows.map((row) => wordsPx(nameOf(row, say), letterPx, 'name')));
  const mostPx = widthPx * HEAD_MOST[isNarrow ? 'narrow' : 'wide'];
  if (isNarrow) return { headPx: mostPx, doingPx: 0 };
  const doingPx = Math.min(mostPx / 2, longest + 3 * EDGE_PX);
  return { headPx: Math.min(mostPx, doingPx + letterPx * DOING_LETTERS), doingPx };
}

/** Who, and beside or under it what they are at, or are to do next. */
export function headDrawing(paper: Paper, { row, top, lanes, doing }: LaidRow) {
  const { lanePx, headPx, doingPx, letterPx, say } = paper;
  if ('rows' in row) return idleDrawing(paper, row.rows, top);
  const [nameAt, doingAt] = doingPx === 0 ? [0.29, 0.7] : [0.5, 0.5];
  const y = (lane: number, at: number) => (top + lane + at) * lanePx + letterPx * 0.35;
  return svg`<g data-task=${doing[0]?.id ?? nothing}>
    <rect class="names" y=${top * lanePx + 1} width=${headPx} height=${lanes * lanePx - 2} />
    <text class="name" x=${EDGE_PX} y=${y(0, nameAt)}>${cutTo(
      nameOf(row, say),
      (doingPx || headPx) - 2 * EDGE_PX,
      letterPx,
    )}</text>
    ${doing.map((bar, lane) =>
      bar || (lane === 0 && doing.every((each) => each === null))
        ? svg`<text class="doing ${bar?.state ?? 'done'}"
            x=${doingPx || EDGE_PX} y=${y(lane, doingAt)}
            data-task=${bar?.id ?? nothing}>${doingWords(paper, bar)}</text>`
        : nothing,
    )}
  </g>`;
}

function idleDrawing(paper: Paper, rows: readonly ChartRow[], top: number) {
  const { lanePx, widthPx, letterPx, say } = paper;
  const words = deskWords[say.language];
  const people = rows.flatMap((row) => (row.kind === 'hand' ? nameOf(row, say) : []));
  const slots = rows.flatMap((row) => (row.kind === 'rack' ? row.slot : []));
  const said =
    slots.length === 0
      ? cutList(people)
      : [saySlots(slots, say), words.racks(slots.length)].filter(Boolean);
  const sentences = said.map((names) => words.nothingMoreFor(names));
  const shown = fitting(sentences, widthPx - 2 * EDGE_PX, letterPx) ?? sentences.at(-1);
  const y = (top + 0.5) * lanePx + letterPx * 0.35;
  return svg`<rect class="names" y=${top * lanePx + 1} width=${widthPx} height=${lanePx - 2} />
    <text class="idle" x=${EDGE_PX} y=${y}>${shown}</text>`;
}

/** All names, and fewer with a sign that there are more. */
const cutList = (names: readonly string[]): string[] =>
  names.map((_, cut) =>
    cut === 0 ? names.join(', ') : `${names.slice(0, names.length - cut).join(', ')}, …`,
  );

function doingWords(paper: Paper, bar: ChartBar | null): string {
  const { say, now, headPx, doingPx, letterPx } = paper;
  const words = deskWords[say.language];
  if (!bar) return words.nothingMore;
  const isRunning = bar.state === 'running';
  const when = isRunning ? bar.endAt : bar.startAt;
  const at = [sayDayAhead(when, now, say), nearClock(when, now, say)].filter(Boolean).join(' ');
  const sentences = shorter(titleOf(paper, bar)).map((what) =>
    isRunning ? words.till(what, at) : words.next(at, what),
  );
  const roomPx = headPx - (doingPx || EDGE_PX) - EDGE_PX;
  return fitting(sentences, roomPx, letterPx) ?? at;
}

function nameOf(row: ChartRow, say: Say): string {
  if (row.kind === 'rack') return saySlot(row.slot, say);
  const { name, isOut } = row.person;
  return isOut ? deskWords[say.language].isOut(name) : name;
}
