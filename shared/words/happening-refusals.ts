import type { HappeningRefusal } from '../day/index.ts';
import type { Odd, Refusal } from '../view/index.ts';
import { clockTime } from './amounts.ts';
import { sayBreach } from './check-refusals.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { scaleWeight } from './scale-weight.ts';
import { inEach } from './tongue.ts';

const phrases = inEach('happening');

let oddSaid: ((odd: readonly Odd[], say: Say) => string) | null = null;

/** From now on it can be said what is odd of what came: only a desk takes in anything. */
export function learnOdd(sayer: NonNullable<typeof oddSaid>): void {
  oddSaid = sayer;
}

/** Whether a refusal is about what happens to the day besides its tasks. */
export function isHappeningRefusal(
  refusal: Refusal,
  say: Pick<Say, 'language'>,
): refusal is HappeningRefusal {
  return Object.hasOwn(phrases[say.language], refusal.rule);
}

/** Why it could not be kept or undone, as one plain sentence. */
export function sayHappeningRefusal(refusal: HappeningRefusal, say: Say): string {
  const at = 'at' in refusal ? refusal.at : 'since' in refusal ? refusal.since : null;
  const person = 'person' in refusal ? refusal.person : 'by' in refusal ? refusal.by : null;
  return phrases[say.language][refusal.rule]({
    smoker: 'smoker' in refusal ? textIn(refusal.smoker.name, say) : '',
    person: person?.name ?? '',
    time: at === null ? '' : clockTime(at, say),
    amount: 'amount' in refusal ? String(refusal.amount) : '',
    lot: 'lot' in refusal ? refusal.lot : '',
    cut: 'cut' in refusal ? textIn(refusal.cut, say) : '',
    day: 'useBy' in refusal ? refusal.useBy : '',
    mix: 'mix' in refusal ? textIn(refusal.mix, say) : '',
    weight: 'weightKg' in refusal ? scaleWeight(refusal.weightKg, say) : '',
    odd: 'odd' in refusal ? (oddSaid?.(refusal.odd, say) ?? '') : '',
    row: 'breach' in refusal ? sayBreach(refusal.breach, say) : '',
  });
}
