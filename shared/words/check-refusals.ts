import type { Breach, CheckRefusal, Refusal } from '../view/index.ts';
import { checkPhrasesOf } from './check-words.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

type Phrases = {
  readonly whoChecked: string;
  readonly nothingToCheck: string;
  readonly readingMissing: string;
  readonly nothingToCorrect: string;
  notAllowed(allowed: string): string;
  readonly barred: {
    failed(batch: string, what: string, why: string): string;
    missed(batch: string, what: string, why: string): string;
    discarded(batch: string): string;
  };
  row(what: string, found: string | null, asked: string | null, source: string): string;
};

const words: Readonly<Record<Language, Phrases>> = {
  en: {
    whoChecked: 'A check stands in somebody’s name: say who looked.',
    nothingToCheck: 'There is no such thing to check today: look at the list again.',
    readingMissing: 'What did the thermometer show? Give the number.',
    nothingToCorrect: 'Nothing is wrong there any more: look at the list again.',
    notAllowed: (allowed) => `Its limit allows only: ${allowed}.`,
    barred: {
      failed: (batch, what, why) =>
        `${batch} is barred: ${what}${why && `. ${why}`}. Say what was done about it first.`,
      missed: (batch, what, why) =>
        `${batch} is barred: ${what}, not looked at in time${why && `. ${why}`}. Look now.`,
      discarded: (batch) => `${batch} was thrown out: nothing of it goes to the pass.`,
    },
    row: (what, found, asked, source) =>
      `${what}${found ? `: found ${found}` : ''}${asked ? `, asked ${asked}` : ''} (${source})`,
  },
  es: {
    whoChecked: 'Una revisión lleva nombre: diga quién miró.',
    nothingToCheck: 'Hoy no hay nada así que revisar: mire la lista otra vez.',
    readingMissing: '¿Qué marcó el termómetro? Dé el número.',
    nothingToCorrect: 'Ahí ya no hay nada mal: mire la lista otra vez.',
    notAllowed: (allowed) => `Su límite solo permite: ${allowed}.`,
    barred: {
      failed: (batch, what, why) =>
        `${batch} no puede salir: ${what}${why && `. ${why}`}. Diga antes qué se hizo.`,
      missed: (batch, what, why) =>
        `${batch} no puede salir: ${what}, sin mirar a tiempo${why && `. ${why}`}. Mire ya.`,
      discarded: (batch) => `${batch} se tiró: nada de ello va al pase.`,
    },
    row: (what, found, asked, source) =>
      `${what}${found ? `: hubo ${found}` : ''}${asked ? `, se pide ${asked}` : ''} (${source})`,
  },
};

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
  const w = words[say.language];
  switch (refusal.rule) {
    case 'who-checked':
      return w.whoChecked;
    case 'nothing-to-check':
      return w.nothingToCheck;
    case 'reading-missing':
      return w.readingMissing;
    case 'nothing-to-correct':
      return w.nothingToCorrect;
    case 'correction-not-allowed': {
      const { action } = checkPhrasesOf(say);
      return w.notAllowed(refusal.allowed.map((each) => action[each]).join(', '));
    }
    default:
      return sayBarred(refusal, say);
  }
}

function sayBarred(refusal: Extract<CheckRefusal, { rule: 'barred' }>, say: Say): string {
  const { barred } = words[say.language];
  const batch = textIn(refusal.batch, say);
  if (refusal.why === 'discarded') return barred.discarded(batch);
  const what = checkPhrasesOf(say).kind[refusal.check];
  return barred[refusal.why](batch, what, refusal.breach ? sayBreach(refusal.breach, say) : '');
}

/** A row with what it asks and what was found. */
export function sayBreach({ row, asked, found }: Breach, say: Say): string {
  const source = [row.section, row.source].filter((word) => word !== 'none').join(', ');
  return words[say.language].row(textIn(row.what, say), found, asked, source);
}
