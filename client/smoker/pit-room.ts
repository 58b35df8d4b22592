import type { Instant } from '../../shared/kernel/index.ts';
import type { Side, SmokerDrawing, TaskView } from '../../shared/view/index.ts';
import { isInTwoRows, type Say, textIn } from '../../shared/words/index.ts';
import { ROW_LETTER, secondLetters } from '../parts/line-second.ts';
import { kindsOf } from '../parts/rack-kinds.ts';
import type { SeenWall } from '../shell/seen-size.ts';

/** In minutes of arc. */
const wideOf = ({ widthPx, arcminPx }: SeenWall) => widthPx / arcminPx;

const NARROW_BELOW = 600;
const TWO_FROM = 900;

/**
 * Below this width the smokers stand one under the other, and the page may be longer than the
 * glass.
 */
export const isNarrow = (wall: SeenWall) => wideOf(wall) < NARROW_BELOW;

/** Heights in minutes of arc: of the head, over the racks of a smoker, and under them. */
const HEAD = 54;
const TITLE = 64;
const HOURS = 28;
const FOOT = 132;
const THEN = 34;
/** A rack in which its pieces can be told. */
const RACK = 50;
/** A free one is a line of words; each kind that lies has two, and its stretch of hours. */
const FREE = 28;
const TO_COME = 42;
const LIES = 78;
const KIND_MORE = 64;
/** Between two places to tap. */
const GAP_PX = 8;

/** The racks of a smoker, counted by how high each is with what is said of it. */
export function highAs({ racks }: SmokerDrawing, now: Instant, say: Say): number {
  const heights = racks.map(({ loads }) => {
    const kinds = kindsOf(loads, now, say).length;
    if (kinds === 0) return loads.length === 0 ? FREE : TO_COME;
    return LIES + (kinds - 1) * KIND_MORE;
  });
  return heights.reduce((sum, high) => sum + high, 0) / RACK;
}

/**
 * Whether so many racks can each be told and tapped with the list of what comes then under them;
 * where they cannot, the racks have its room.
 */
export function hasThen({ heightPx, arcminPx, touchPx }: SeenWall, racks: number): boolean {
  const footPx = Math.max(FOOT * arcminPx, 2 * touchPx + 3 * GAP_PX);
  const thenPx = Math.max(THEN * arcminPx, touchPx);
  const overPx = (HEAD + TITLE + HOURS) * arcminPx;
  return heightPx - overPx - footPx - thenPx >= racks * Math.max(RACK * arcminPx, touchPx);
}

/** How many lines of work may stand over one another at the foot. */
export const pitLines = (wall: SeenWall) => (wideOf(wall) < TWO_FROM ? 1 : 2);

/** In which words, and for whose hands. */
type Read = { readonly say: Say; readonly side: Side | null };

/** Whether each of them says there, in half of the foot, to what standard it is to be done. */
export const canShareFoot = (
  tasks: readonly TaskView[],
  wall: SeenWall,
  { say, side }: Read,
): boolean =>
  tasks.every((task) => {
    const room = { wide: wideOf(wall), second: secondLetters(task, say, side) };
    return isInTwoRows(task, room, say);
  });

/** Of a line that has the foot for itself: what is beside its words, and a letter of its title. */
const BESIDE_WORDS = 412;
const TITLE_LETTER = 18.6;

/** Whether it has room for high letters: else its words are as large as where there are two. */
export function hasHighLetters(task: TaskView, wall: SeenWall, { say, side }: Read): boolean {
  const wide = wideOf(wall) - BESIDE_WORDS;
  return (
    TITLE_LETTER * textIn(task.title, say).length <= wide &&
    ROW_LETTER * secondLetters(task, say, side) <= wide
  );
}
