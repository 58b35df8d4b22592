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

/**
 * How many and how heavy, which mix, how hot, on which thing: the small row of a line. Where there
 * is little room a round says only which thing it is for.
 */
export function amountsOf(task: TaskView, say: Say, isBrief: boolean): string {
  const { weightKg, mix, check, thing } = task;
  if (isBrief && thing) return textIn(thing, say);
  const words = [
    countOf(task, say),
    weightKg > 0 && unbroken(weight(weightKg, say)),
    mix && `${textIn(mix.name, say)}, ${unbroken(scaleWeight(mix.weightKg, say))}`,
    check?.coreAtLeastC && unbroken(coreOf(check, temperature(check.coreAtLeastC, say), say)),
    thing && textIn(thing, say),
  ];
  return words.filter(Boolean).join(' · ');
}

/** Of a cook the number is a guide, and a hand says when it is done; else it is a limit. */
function coreOf({ of }: NonNullable<TaskView['check']>, temp: string, say: Say): string {
  const isOfCook = (of ?? 'the cook') === 'the cook';
  return isOfCook ? checkWords[say.language].guide(temp) : `≥ ${temp}`;
}

/** A figure keeps its unit beside it. */
export const unbroken = (amount: string) => amount.replaceAll(' ', '\u00a0');
