import type { Intent, Person } from '../../shared/view/index.ts';
import { type Say, ui } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';

/** A box for each name that is here, to go out, and for each that is out, to come in again. */
export function crewChoices(
  people: readonly Person[],
  say: Say,
  tap: (intent: Intent) => void,
): Choice[] {
  const words = ui[say.language];
  return people
    .filter(({ onShift, isOut }) => onShift || isOut)
    .map(({ id: hand, name, isOut }) => ({
      label: isOut ? words.comesIn(name) : words.goesOut(name),
      choose: () => tap(isOut ? { kind: 'handIn', hand } : { kind: 'handOut', hand, backAt: null }),
    }));
}
