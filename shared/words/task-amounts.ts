import type { TaskView } from '../view/index.ts';
import { clockTime, countPieces, temperature, weight } from './amounts.ts';
import { checkWords } from './check-band-words.ts';
import { saySlots } from './reasons.ts';
import { type Say, textIn } from './say.ts';
import { scaleWeight } from './scale-weight.ts';
import { ui } from './ui.ts';

/** How many of what, or how heavy; nothing where it is the one thing that is named beside it. */
function countOf({ pieces, piece, thing, byWeight, weightKg }: TaskView, say: Say): string {
  if (byWeight) return unbroken(weight(weightKg, say));
  return thing && pieces === 1 ? '' : countPieces(pieces, piece, say);
}

/** Where no raw meat is in the hand it is the mix that goes on the scale. */
export const isOfMix = ({ mix, side }: TaskView) => mix !== undefined && side !== 'raw';

/** The same in a row that has room for one amount: of what goes on the scale, what that shows. */
export const amountOf = (task: TaskView, say: Say): string =>
  task.mix && isOfMix(task) ? unbroken(scaleWeight(task.mix.weightKg, say)) : countOf(task, say);

/** How many and how heavy, which mix, how hot, on which thing, and where: the row of a line. */
export function amountsOf(task: TaskView, say: Say): string {
  const named = task.thing && textIn(task.thing, say);
  return joined(...muchOf(task, say), heatOf(task, say), named, whereOf(task, say));
}

/** In which smoker, on which racks. */
const whereOf = ({ racks }: TaskView, say: Say) => racks && unbroken(saySlots(racks, say));

/** How many and how heavy, and which mix; of one that is weighed the pieces are what it is for. */
function muchOf(task: TaskView, say: Say): readonly (string | null | undefined)[] {
  const [count, mix] = [countOf(task, say), mixOf(task, say)];
  if (!mix || !isOfMix(task)) return [count, heavyOf(task, say), mix];
  return [capital(mix), count && ui[say.language].forThese(count)];
}

/** Of a brief line, in minutes of arc: what is beside its words, its tally, and a letter. */
const BESIDE_WORDS = 446;
const TALLY = 124;
const LETTER = 15.4;
/** Of the small letters to those of a title. */
const SMALLER = 0.8;

/**
 * How many letters as large as its title's stand beside each other in a brief line so wide in
 * minutes of arc. What is counted once it runs leaves that its room before, too.
 */
const lettersIn = ({ pieces }: TaskView, wide: number) =>
  (wide - BESIDE_WORDS - (pieces > 1 ? TALLY : 0)) / LETTER;

const isOnOne = (title: string, behind: string, letters: number) =>
  title.length + 1 + SMALLER * behind.length <= letters;

/** What a brief line has for its words. */
type Room = { readonly wide: number; readonly isTall: boolean };

/**
 * What of it has room behind a title in a line so wide in minutes of arc: how much, of a round
 * first on which thing, how hot, and where. A guide leaves before it takes the row of what is to be
 * minded, which a hand finds; a limit never does.
 */
export function amountBehind(title: string, task: TaskView, room: Room, say: Say): string {
  const [named, count] = [task.thing ? textIn(task.thing, say) : '', unbroken(countOf(task, say))];
  const [heavy, mix, heat] = [heavyOf(task, say), mixOf(task, say), heatOf(task, say)];
  const least = joined(named || heavy || count, heat);
  const where = whereOf(task, say);
  const said = [
    joined(named, count, heavy, mix, heat, where),
    joined(named, count, mix, heat, where),
    joined(named, count, heat, where),
    joined(named, count, heavy, mix, heat),
    joined(named, count, mix, heat),
    joined(named, count, heat),
    ...(isGuide(task) && !room.isTall ? [joined(named, count), heavy] : []),
  ];
  return said.find((each) => isOnOne(title, each, lettersIn(task, room.wide))) ?? least;
}

/**
 * Whether a brief line says on one row what and how much, and on another, with so many letters,
 * what is to be minded.
 */
export function isInTwoRows(
  task: TaskView,
  { wide, second }: { readonly wide: number; readonly second: number },
  say: Say,
): boolean {
  const title = textIn(task.title, say);
  const letters = lettersIn(task, wide);
  return (
    isOnOne(title, amountBehind(title, task, { wide, isTall: false }, say), letters) &&
    SMALLER * second <= letters
  );
}

const mixOf = ({ mix }: TaskView, say: Say) =>
  mix && `${textIn(mix.name, say)}, ${unbroken(scaleWeight(mix.weightKg, say))}`;

function heatOf(task: TaskView, say: Say): string {
  const { check, limit } = task;
  const words = checkWords[say.language];
  const least = limit?.atLeastC ?? check?.coreAtLeastC ?? null;
  const most = limit?.atMostC ?? check?.coreAtMostC ?? null;
  if (least !== null) {
    const temp = temperature(least, say);
    return unbroken(limit || !isGuide(task) ? `≥ ${temp}` : words.guide(temp));
  }
  if (most === null) return '';
  const by = limit?.byAt ? [words.by(clockTime(limit.byAt, say))] : [];
  return unbroken([`≤ ${temperature(most, say)}`, ...by].join(' '));
}

const heavyOf = ({ weightKg, byWeight }: TaskView, say: Say) =>
  weightKg > 0 && !byWeight ? unbroken(weight(weightKg, say)) : '';

const joined = (...words: readonly (string | number | null | undefined)[]) =>
  words.filter(Boolean).join(' · ');

/** Of a cook the number is a guide, and a hand says when it is done; else it is a limit. */
const isGuide = ({ check }: TaskView) => (check?.of ?? 'the cook') === 'the cook';

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** A figure keeps its unit beside it. */
export const unbroken = (amount: string) => amount.replaceAll(' ', '\u00a0');
