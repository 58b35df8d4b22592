import type { Instant, Text } from '../kernel/index.ts';
import type { DayEnd, DeskView, PanEnd, Person } from '../view/index.ts';
import { leftByService } from '../view/index.ts';
import { clockTime, weight } from './amounts.ts';
import { las } from './at-clock.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';
import { someOf } from './some-of.ts';

/** The words for what is left at the end of a day, and for closing it; only the desk has them. */
export type ClosingWords = {
  readonly left: string;
  readonly nothingLeft: string;
  /** Over what may yet be sold. */
  stillOn(service: string, till: string): string;
  amount(portions: number, weight: string): string;
  heldTill(time: string): string;
  readonly heldTooLong: string;
  kept(weight: string): string;
  readonly thrownOut: string;
  /** Of places to tap. */
  readonly keepSome: string;
  readonly keepThis: string;
  readonly throwOut: string;
  /** Asked once more of what is still being sold. */
  meant(amount: string): string;
  whatOf(batch: string): string;
  readonly weighed: string;

  readonly closing: string;
  readonly nothingOpen: string;
  /** What is to be settled before, in one line. */
  readonly settle: {
    first(what: string): string;
    on(service: string, till: string): string;
    pans(count: number): string;
    tasks(count: number): string;
    smokers(count: number): string;
    people(count: number): string;
  };
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
  /** Asked once more while a service is still to come. */
  allTheSame(services: string): string;
  opens(service: string, at: string): string;
  closedAt(time: string, name: string | null): string;
  readonly openAgain: string;
  readonly hubAway: string;
};

const english: ClosingWords = {
  left: 'What is left',
  nothingLeft: 'Nothing is left in a pan or a cabinet.',
  stillOn: (service, till) => `${service} is served till ${till}`,
  amount: (portions, amount) =>
    portions === 1 ? `1 portion, about ${amount}` : `${portions} portions, about ${amount}`,
  heldTill: (time) => `may be held till ${time}`,
  heldTooLong: 'held too long: check before you keep it',
  kept: (amount) => `${amount} kept for another day`,
  thrownOut: 'thrown out',
  keepSome: 'keep …',
  keepThis: 'keep this',
  throwOut: 'throw out',
  meant: (amount) => `It may still be sold. Throw out ${amount}?`,
  whatOf: (batch) => `what is kept of ${batch}`,
  weighed: 'weighed',

  closing: 'Close the day',
  nothingOpen: 'Nothing stands open: the day can be closed.',
  settle: {
    first: (what) => `Before the day is closed: ${what}.`,
    on: (service, till) => `${service} till ${till}`,
    pans: (count) =>
      count === 1 ? '1 pan to keep or throw out' : `${count} pans to keep or throw out`,
    tasks: (count) => (count === 1 ? '1 task to finish' : `${count} tasks to finish`),
    smokers: (count) => (count === 1 ? '1 smoker down' : `${count} smokers down`),
    people: (count) => (count === 1 ? '1 person out' : `${count} people out`),
  },
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
  allTheSame: (services) => `Still to be served: ${services}. Close the day all the same?`,
  opens: (service, at) => `${service} from ${at}`,
  closedAt: (time, name) => `The day was closed at ${time}${name ? ` by ${name}` : ''}.`,
  openAgain: 'take the closing back',
  hubAway: 'The hub does not answer: a PIN cannot be looked at now.',
};

const spanish: ClosingWords = {
  left: 'Lo que queda',
  nothingLeft: 'No queda nada en charolas ni gabinetes.',
  stillOn: (service, till) => `${service}: se sirve hasta ${las(till)}`,
  amount: (portions, amount) =>
    portions === 1 ? `1 porción, unos ${amount}` : `${portions} porciones, unos ${amount}`,
  heldTill: (time) => `se puede mantener hasta ${time}`,
  heldTooLong: 'demasiado tiempo: revise antes de apartarlo',
  kept: (amount) => `${amount} para otro día`,
  thrownOut: 'a la basura',
  keepSome: 'apartar …',
  keepThis: 'apartar esto',
  throwOut: 'tirar',
  meant: (amount) => `Todavía se puede vender. ¿Tirar ${amount}?`,
  whatOf: (batch) => `lo que se aparta de ${batch}`,
  weighed: 'pesado',

  closing: 'Cerrar el día',
  nothingOpen: 'No queda nada abierto: se puede cerrar el día.',
  settle: {
    first: (what) => `Antes de cerrar el día: ${what}.`,
    on: (service, till) => `${service} hasta ${las(till)}`,
    pans: (count) => `${count} ${count === 1 ? 'charola' : 'charolas'} por apartar o tirar`,
    tasks: (count) => `${count} ${count === 1 ? 'tarea' : 'tareas'} por acabar`,
    smokers: (count) => (count === 1 ? '1 ahumador apagado' : `${count} ahumadores apagados`),
    people: (count) => (count === 1 ? '1 persona fuera' : `${count} personas fuera`),
  },
  open: {
    running: (tasks) => `Aún en marcha: ${tasks}.`,
    down: (smokers) => `Apagado o frío: ${smokers}.`,
    out: (people) => `Aún fuera: ${people}.`,
    unsaid: (dishes) => `Queda, y nadie dijo adónde va: ${dishes}.`,
    goesOn: (batches) => `Sigue al día siguiente: ${batches}.`,
    neverBegan: (batches) => `No se empezó: ${batches}.`,
  },
  whoCloses: '¿Quién lo cierra?',
  typePin: (name) => `${name}: su PIN`,
  iAmHere: 'estoy aquí',
  afterwards: (name) => `${name} cierra el día. Después solo se puede deshacer el cierre.`,
  closeAs: (name) => `cerrarlo como ${name}`,
  allTheSame: (services) => `Falta por servir: ${services}. ¿Cerrar el día de todos modos?`,
  opens: (service, at) => `${service} desde ${las(at)}`,
  closedAt: (time, name) => `El día se cerró a ${las(time)}${name ? ` (${name})` : ''}.`,
  openAgain: 'deshacer el cierre',
  hubAway: 'La central no responde: ahora no se puede revisar un PIN.',
};

/** @example closingWords.en.throwOut //=> 'throw out' */
export const closingWords: Readonly<Record<Language, ClosingWords>> = { en: english, es: spanish };

/** A kind of thing that stands open: a sentence, and all its names where that counts some. */
export type StillOpen = { readonly said: string; readonly all: readonly string[] | null };

/** All that stands open before a day is closed, a plain sentence for each kind of thing. */
export function sayStillOpen(end: DayEnd, people: readonly Person[], say: Say): StillOpen[] {
  const { open } = closingWords[say.language];
  const unsaid = end.dishes.filter(({ pans }) => pans.some((pan) => pan.left > 0));
  const named = (things: readonly { readonly name: Text }[]) =>
    things.map(({ name }) => textIn(name, say));
  const running = end.running.map(
    ({ title, batch }) => `${textIn(title, say)} (${textIn(batch, say)})`,
  );
  const kinds: readonly (readonly [(names: string) => string, readonly string[]])[] = [
    [open.running, running],
    [open.down, end.smokersDown.map((name) => textIn(name, say))],
    [open.out, people.filter(({ isOut }) => isOut).map(({ name }) => name)],
    [open.unsaid, named(unsaid)],
    [open.goesOn, end.goesOn.map((name) => textIn(name, say))],
    [open.neverBegan, end.neverBegan.map((name) => textIn(name, say))],
  ];
  return kinds
    .filter(([, names]) => names.length > 0)
    .map(([sentence, names]) => {
      const some = someOf(names, say);
      return { said: sentence(some), all: some === names.join(', ') ? null : names };
    });
}

/**
 * What is to be settled before the day is closed, in one line.
 * @example sayToSettle(end, people, now, say) //=> 'Before the day is closed: 9 pans to keep …'
 */
export function sayToSettle(
  end: DayEnd,
  people: readonly Person[],
  now: Instant,
  say: Say,
): string {
  const { settle, nothingOpen, open } = closingWords[say.language];
  const pans = end.dishes.flatMap((dish) => dish.pans).filter(({ left }) => left > 0);
  const on = leftByService(end, now).flatMap(({ service }) => service ?? []);
  const out = people.filter(({ isOut }) => isOut);
  const count = (of: readonly unknown[], words: (count: number) => string) =>
    of.length === 0 ? [] : [words(of.length)];
  const what = [
    ...on.map(({ name, closesAt }) => settle.on(textIn(name, say), clockTime(closesAt, say))),
    ...count(pans, settle.pans),
    ...count(end.running, settle.tasks),
    ...count(end.smokersDown, settle.smokers),
    ...count(out, settle.people),
  ];
  if (what.length > 0) return settle.first(what.join(', '));
  const never = end.neverBegan.map((name) => textIn(name, say));
  return never.length > 0 ? open.neverBegan(someOf(never, say)) : nothingOpen;
}

/** What is asked before a day is closed that has a service on or still to come; null where none. */
export function sayAllTheSame(
  standings: DeskView['standings'],
  now: Instant,
  say: Say,
): string | null {
  const words = closingWords[say.language];
  const services = standings
    .filter(({ closesAt }) => closesAt > now)
    .map(({ name, opensAt, closesAt }) => {
      const called = textIn(name, say);
      return opensAt > now
        ? words.opens(called, clockTime(opensAt, say))
        : words.settle.on(called, clockTime(closesAt, say));
    });
  return services.length === 0 ? null : words.allTheSame(services.join(', '));
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
