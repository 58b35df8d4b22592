import type { TaskView } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import {
  checkWords,
  countPieces,
  scaleWeight,
  temperature,
  textIn,
  weight,
} from '../../shared/words/index.ts';

/** How many of what; nothing where it is the one thing that is named beside it. */
export const countOf = ({ pieces, piece, thing }: TaskView, say: Say): string =>
  thing && pieces === 1 ? '' : countPieces(pieces, piece, say);

/** How many and how heavy, which mix, how hot, on which thing: the small row of a line. */
export function amountsOf(task: TaskView, say: Say): string {
  const { thing } = task;
  const named = thing && textIn(thing, say);
  return joined(countOf(task, say), heavyOf(task, say), besideAmount(task, say), named);
}

/** Which mix and how hot. */
export function besideAmount({ mix, check }: TaskView, say: Say): string {
  return joined(
    mix && `${textIn(mix.name, say)}, ${unbroken(scaleWeight(mix.weightKg, say))}`,
    check?.coreAtLeastC && unbroken(coreOf(check, temperature(check.coreAtLeastC, say), say)),
  );
}

/** Of a brief line, in minutes of arc: what is beside its title, and a letter of that. */
const BESIDE_TITLE = 154;
const LETTER = 15.8;
/** Of the letters behind a title to its own, and how many of those a break takes. */
const SMALLER = 0.8;
const BREAK = 10;

/**
 * What of it has room behind a title, on its line or at most on a second, of a line so wide in
 * minutes of arc: how much, and of a round first on which thing.
 */
export function amountBehind(title: string, task: TaskView, wide: number, say: Say): string {
  const [named, count] = [task.thing ? textIn(task.thing, say) : '', unbroken(countOf(task, say))];
  const heavy = heavyOf(task, say);
  const least = named || heavy || count;
  const said = [joined(named, count, heavy), joined(named, count), least];
  const line = (wide - BESIDE_TITLE) / LETTER;
  const within = (letters: number) =>
    said.find((each) => title.length + 1 + SMALLER * each.length <= letters);
  return within(line) ?? within(2 * line - BREAK) ?? least;
}

const heavyOf = ({ weightKg }: TaskView, say: Say) =>
  weightKg > 0 ? unbroken(weight(weightKg, say)) : '';

const joined = (...words: readonly (string | number | null | undefined)[]) =>
  words.filter(Boolean).join(' · ');

/** Of a cook the number is a guide, and a hand says when it is done; else it is a limit. */
function coreOf({ of }: NonNullable<TaskView['check']>, temp: string, say: Say): string {
  const isOfCook = (of ?? 'the cook') === 'the cook';
  return isOfCook ? checkWords[say.language].guide(temp) : `≥ ${temp}`;
}

/** A figure keeps its unit beside it. */
export const unbroken = (amount: string) => amount.replaceAll(' ', '\u00a0');
