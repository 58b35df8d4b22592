import type { DayEnd, PanEnd, Person } from '../view/index.ts';
import { clockTime, weight } from './amounts.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';
import { someOf } from './some-of.ts';

/** The words for what is left at the end of a day, and for closing it; only the desk has them. */
export type ClosingWords = {
  readonly left: string;
  readonly nothingLeft: string;
  amount(portions: number, weight: string): string;
  heldTill(time: string): string;
  readonly heldTooLong: string;
  kept(weight: string): string;
  readonly thrownOut: string;
  /** Of places to tap. */
  readonly keepSome: string;
  readonly keepThis: string;
  readonly throwOut: string;
  whatOf(batch: string): string;
  readonly weighed: string;

  readonly closing: string;
  readonly nothingOpen: string;
  readonly open: {
    running(tasks: string): string;
    down(smokers: string): string;
    out(people: string): string;
    unsaid(dishes: string): string;
    goesOn(batches: string): string;
    neverBegan(batches: string): string;
  };
  readonly whoCloses: string;
  typePin(name: string): string;
  readonly iAmHere: string;
  afterwards(name: string): string;
  closeAs(name: string): string;
  closedAt(time: string, name: string | null): string;
  readonly openAgain: string;
  readonly hubAway: string;
};

const english: ClosingWords = {
  left: 'What is left',
  nothingLeft: 'Nothing is left in a pan or a cabinet.',
  amount: (portions, amount) =>
    portions === 1 ? `1 portion, about ${amount}` : `${portions} portions, about ${amount}`,
  heldTill: (time) => `may be held till ${time}`,
  heldTooLong: 'held too long: check before you keep it',
  kept: (amount) => `${amount} kept for another day`,
  thrownOut: 'thrown out',
  keepSome: 'keep …',
  keepThis: 'keep this',
  throwOut: 'throw out',
  whatOf: (batch) => `what is kept of ${batch}`,
  weighed: 'weighed',

  closing: 'Close the day',
  nothingOpen: 'Nothing stands open.',
  open: {
    running: (tasks) => `Still under way: ${tasks}.`,
    down: (smokers) => `Down or cold: ${smokers}.`,
    out: (people) => `Still out: ${people}.`,
    unsaid: (dishes) => `Left, and nobody has said where it goes: ${dishes}.`,
    goesOn: (batches) => `Goes on into the next day: ${batches}.`,
    neverBegan: (batches) => `Never began: ${batches}.`,
  },
  whoCloses: 'Who closes it?',
  typePin: (name) => `${name}: your PIN`,
  iAmHere: 'I am here',
  afterwards: (name) =>
    `${name} closes the day. After it nothing is taken but taking the closing back.`,
  closeAs: (name) => `close it as ${name}`,
  closedAt: (time, name) => `The day was closed at ${time}${name ? ` by ${name}` : ''}.`,
  openAgain: 'take the closing back',
  hubAway: 'The hub does not answer: a PIN cannot be looked at now.',
};

const spanish: ClosingWords = {
  left: 'Lo que queda',
  nothingLeft: 'No queda nada en bandejas ni gabinetes.',
  amount: (portions, amount) =>
    portions === 1 ? `1 porción, unos ${amount}` : `${portions} porciones, unos ${amount}`,
  heldTill: (time) => `se puede mantener hasta ${time}`,
  heldTooLong: 'demasiado tiempo: revise antes de guardarlo',
  kept: (amount) => `${amount} para otro día`,
  thrownOut: 'a la basura',
  keepSome: 'guardar …',
  keepThis: 'guardar esto',
  throwOut: 'tirar',
  whatOf: (batch) => `lo que se guarda de ${batch}`,
  weighed: 'pesado',

  closing: 'Cerrar el día',
  nothingOpen: 'No queda nada abierto.',
  open: {
    running: (tasks) => `Aún en marcha: ${tasks}.`,
    down: (smokers) => `Apagado o frío: ${smokers}.`,
    out: (people) => `Aún fuera: ${people}.`,
    unsaid: (dishes) => `Queda, y nadie dijo adónde va: ${dishes}.`,
    goesOn: (batches) => `Sigue al otro día: ${batches}.`,
    neverBegan: (batches) => `No se empezó: ${batches}.`,
  },
  whoCloses: '¿Quién lo cierra?',
  typePin: (name) => `${name}: su PIN`,
  iAmHere: 'estoy aquí',
  afterwards: (name) =>
    `${name} cierra el día. Después no se toma nada más que deshacer el cierre.`,
  closeAs: (name) => `cerrarlo como ${name}`,
  closedAt: (time, name) => `El día se cerró a las ${time}${name ? ` (${name})` : ''}.`,
  openAgain: 'deshacer el cierre',
  hubAway: 'La central no responde: ahora no se puede mirar un PIN.',
};

/** @example closingWords.en.throwOut //=> 'throw out' */
export const closingWords: Readonly<Record<Language, ClosingWords>> = { en: english, es: spanish };

/** All that stands open before a day is closed, a plain sentence for each kind of thing. */
export function sayStillOpen(end: DayEnd, people: readonly Person[], say: Say): string[] {
  const words = closingWords[say.language];
  const { open } = words;
  const unsaid = end.dishes.filter(({ pans }) => pans.some((pan) => pan.left > 0));
  const of = (sentence: (names: string) => string, names: readonly string[]) =>
    names.length === 0 ? [] : [sentence(someOf(names, say))];
  const sentences = [
    ...of(
      open.running,
      end.running.map(({ title, batch }) => `${textIn(title, say)} (${textIn(batch, say)})`),
    ),
    ...of(
      open.down,
      end.smokersDown.map((name) => textIn(name, say)),
    ),
    ...of(
      open.out,
      people.filter(({ isOut }) => isOut).map(({ name }) => name),
    ),
    ...of(
      open.unsaid,
      unsaid.map(({ name }) => textIn(name, say)),
    ),
    ...of(
      open.goesOn,
      end.goesOn.map((name) => textIn(name, say)),
    ),
    ...of(
      open.neverBegan,
      end.neverBegan.map((name) => textIn(name, say)),
    ),
  ];
  return sentences.length > 0 ? sentences : [words.nothingOpen];
}

/** What is left of a batch, or where it has gone, as one line. */
export function sayPanEnd(pan: PanEnd, say: Say): string {
  const words = closingWords[say.language];
  if (pan.keptKg === null) return words.amount(pan.left, weight(pan.weightKg, say));
  return pan.keptKg > 0 ? words.kept(weight(pan.keptKg, say)) : words.thrownOut;
}

/** When the day was closed, and by whom. @example sayClosed(closed, say) //=> 'The day was …' */
export const sayClosed = (
  { at, by }: { readonly at: Parameters<typeof clockTime>[0]; readonly by: string | null },
  say: Say,
): string => closingWords[say.language].closedAt(clockTime(at, say), by);
