import type { ReadingFound } from '../day/index.ts';
import type { Language } from './say.ts';

type Words = Readonly<Record<Exclude<ReadingFound, 'sound'>, (count: number) => string>> & {
  kept(count: number): string;
};

const s = (count: number) => (count === 1 ? '' : 's');
const son = (count: number) => (count === 1 ? 'es' : 'son');
const is = (count: number) => (count === 1 ? 'is' : 'are');

const english: Words = {
  kept: (n) => `${n} reading${s(n)} kept.`,
  'out-of-order': (n) => `${n} came after a later one, and ${is(n)} kept in its place.`,
  'fell-out': (n) =>
    `${n} no core can show so soon after the one before: the probe fell out. Kept, not believed.`,
  duplicate: (n) => `${n} had been kept before.`,
  'from-the-future': (n) => `${n} ${is(n)} of a time to come: set the clock of the sender.`,
  'before-the-day': (n) => `${n} ${is(n)} of before this day.`,
  impossible: (n) => `${n} no working thermometer shows.`,
  'unknown-place': (n) => `${n} ${is(n)} of a smoker or a load that this day does not have.`,
  'no-plan': (n) => `${n} came before there is a plan.`,
};

const spanish: Words = {
  kept: (n) => `${n} ${n === 1 ? 'lectura guardada' : 'lecturas guardadas'}.`,
  'out-of-order': (n) =>
    `${n} ${n === 1 ? 'llegó' : 'llegaron'} tras una más tardía; van en su lugar.`,
  'fell-out': (n) =>
    `${n} que ningún centro marca tan poco después: la sonda se salió. No se toma en cuenta.`,
  duplicate: (n) => `${n} ya ${n === 1 ? 'estaba guardada' : 'estaban guardadas'}.`,
  'from-the-future': (n) => `${n} ${son(n)} de una hora por venir: ajuste el reloj de quien envía.`,
  'before-the-day': (n) => `${n} ${son(n)} de antes de este día.`,
  impossible: (n) => `${n} que ningún termómetro sano marca.`,
  'unknown-place': (n) => `${n} ${son(n)} de un ahumador o una carga que este día no tiene.`,
  'no-plan': (n) => `${n} ${n === 1 ? 'llegó' : 'llegaron'} antes de que hubiera un plan.`,
};

const languages = { en: english, es: spanish } as const satisfies Record<string, Words>;

const KEPT: readonly ReadingFound[] = ['sound', 'out-of-order', 'fell-out'];

/** What became of readings that were sent, a sentence for each kind of it. */
export function sayReadings(found: readonly ReadingFound[], language: Language): string[] {
  const words = languages[language];
  const counts = new Map<ReadingFound, number>();
  for (const each of found) counts.set(each, (counts.get(each) ?? 0) + 1);
  const kept = found.filter((each) => KEPT.includes(each)).length;
  const rest = [...counts].flatMap(([what, n]) => (what === 'sound' ? [] : [words[what](n)]));
  return [words.kept(kept), ...rest];
}
