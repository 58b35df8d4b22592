import type { Breach, CheckRefusal, Refusal } from '../view/index.ts';
import { checkPhrasesOf } from './check-words.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';

const rules: ReadonlySet<string> = new Set<CheckRefusal['rule']>([
  'who-checked',
  'nothing-to-check',
  'reading-missing',
  'nothing-to-correct',
  'correction-not-allowed',
  'barred',
]);

/** Whether a refusal is about what has to be looked at. */
export const isCheckRefusal = (refusal: Refusal): refusal is CheckRefusal =>
  rules.has(refusal.rule);

/** Why a check was not kept, or what it keeps from happening, as one plain sentence. */
export function sayCheckRefusal(refusal: CheckRefusal, say: Say): string {
  const { refused: w, action } = checkPhrasesOf(say);
  switch (refusal.rule) {
    case 'who-checked':
      return w.whoChecked;
    case 'nothing-to-check':
      return w.nothingToCheck;
    case 'reading-missing':
      return w.readingMissing;
    case 'nothing-to-correct':
      return w.nothingToCorrect;
    case 'correction-not-allowed':
      return w.notAllowed(refusal.allowed.map((each) => action[each]).join(', '));
    default:
      return sayBarred(refusal, say);
  }
}

function sayBarred(refusal: Extract<CheckRefusal, { rule: 'barred' }>, say: Say): string {
  const { kind, refused } = checkPhrasesOf(say);
  const { barred } = refused;
  const batch = textIn(refusal.batch, say);
  if (refusal.why === 'discarded') return barred.discarded(batch);
  const what = kind[refusal.check];
  return barred[refusal.why](batch, what, refusal.breach ? sayBreach(refusal.breach, say) : '');
}

/** A row with what it asks and what was found. */
export function sayBreach({ row, asked, found }: Breach, say: Say): string {
  const source = [row.section, row.source].filter((word) => word !== 'none').join(', ');
  return checkPhrasesOf(say).refused.row(textIn(row.what, say), found, asked, source);
}
