import type { TaskView } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { countPieces, scaleWeight, temperature, textIn, weight } from '../../shared/words/index.ts';

/** How many and how heavy, which mix, how hot, on which thing: the small row of a line. */
export function amountsOf({ pieces, piece, weightKg, mix, check, thing }: TaskView, say: Say) {
  const words = [
    countPieces(pieces, piece, say),
    weightKg > 0 && unbroken(weight(weightKg, say)),
    mix && `${textIn(mix.name, say)}, ${unbroken(scaleWeight(mix.weightKg, say))}`,
    check?.coreAtLeastC && unbroken(`≥ ${temperature(check.coreAtLeastC, say)}`),
    thing && textIn(thing, say),
  ];
  return words.filter(Boolean).join(' · ');
}

/** A figure keeps its unit beside it. */
const unbroken = (amount: string) => amount.replaceAll(' ', '\u00a0');
