import type { Language } from './say.ts';

/** The fixed words of the desk, which no other screen carries. */
export type DeskWords = {
  readonly desk: string;
  readonly sections: Record<DeskSectionName, string>;
  readonly allReady: string;
  readonly spread: SpreadWords;
  forDay(day: string, plan: number): string;

  readonly dayChart: string;
  isOut(name: string): string;
  readonly nearer: string;
  readonly further: string;
  readonly toNow: string;
  readonly pickOne: string;
  /** A range that eight of ten ends fall into. */
  ends(at: string, range: string | null): string;
  startedAt(time: string): string;
  doneAt(time: string): string;
  because(time: string, title: string, why: string): string;
  plannedWas(time: string): string;
  decides(services: string): string;

  readonly pull: string;
  readonly pieces: string;
  readonly weight: string;
  readonly outBy: string;
  readonly mixes: string;
  readonly allergens: string;
  readonly noAllergens: string;
};

/** What the cooks may yet make of a service, in eight of ten cases. */
type SpreadWords = {
  inHand(time: string): string;
  short(time: string): string;
  readonly nothing: string;
  /** In more than one of ten cases it never does. */
  readonly never: string;
  atBest(high: string): string;
  between(low: string, high: string): string;
};

/** @see deskWords, in this order on the page */
export type DeskSectionName =
  | 'day'
  | 'smokers'
  | 'safety'
  | 'plan'
  | 'mend'
  | 'pull'
  | 'record'
  | 'close'
  | 'log'
  | 'who';

const english: DeskWords = {
  desk: 'Desk',
  sections: {
    day: 'Day',
    smokers: 'Smokers',
    safety: 'Safety',
    plan: 'Plan',
    mend: 'Mend',
    pull: 'Pull list',
    record: 'Record',
    close: 'Close',
    log: 'Log',
    who: 'Who',
  },
  allReady: 'All services stand ready.',
  spread: {
    inHand: (time) => `${time} to spare`,
    short: (time) => `${time} late`,
    nothing: 'nothing to spare',
    never: 'as the cooks go, it may never stand ready',
    atBest: (high) => `as the cooks go, at best ${high}, and it may never stand ready`,
    between: (low, high) => `as the cooks go, 8 of 10: ${low} to ${high}`,
  },
  forDay: (day, plan) => `${day}, plan ${plan}`,
  dayChart: 'The day on ruled time: arrows move it, plus and minus bring it nearer and further',
  isOut: (name) => `${name} · out`,
  nearer: 'nearer',
  further: 'further',
  toNow: 'to now',
  pickOne: 'Tap a task to see why it is when it is. Drawn heavy: what the service hangs on.',
  ends: (at, range) => (range ? `ends about ${at}, between ${range}` : `ends ${at}`),
  startedAt: (time) => `started ${time}`,
  doneAt: (time) => `done ${time}`,
  because: (time, title, why) => `${time} ${title}: ${why}`,
  plannedWas: (time) => `planned for ${time}`,
  decides: (services) => `${services} hangs on it`,
  pull: 'Pull from the cooler',
  pieces: 'pieces',
  weight: 'weight',
  outBy: 'out by',
  mixes: 'Mix',
  allergens: 'allergens',
  noAllergens: 'no allergens named',
};

const spanish: DeskWords = {
  desk: 'Escritorio',
  sections: {
    day: 'Día',
    smokers: 'Ahumadores',
    safety: 'Inocuidad',
    plan: 'Plan',
    mend: 'Arreglo',
    pull: 'Lista de saque',
    record: 'Lotes',
    close: 'Cierre',
    log: 'Registro',
    who: 'Quién',
  },
  allReady: 'Todos los servicios están listos.',
  spread: {
    inHand: (time) => `${time} de margen`,
    short: (time) => `${time} de retraso`,
    nothing: 'sin margen',
    never: 'según la cocción, quizá nunca esté listo',
    atBest: (high) => `según la cocción, como mucho ${high}, y quizá nunca esté listo`,
    between: (low, high) => `según la cocción, 8 de 10: de ${low} a ${high}`,
  },
  forDay: (day, plan) => `${day}, plan ${plan}`,
  dayChart: 'El día en tiempo reglado: flechas lo mueven, más y menos lo acercan y alejan',
  isOut: (name) => `${name} · fuera`,
  nearer: 'más cerca',
  further: 'más lejos',
  toNow: 'a ahora',
  pickOne: 'Toque una tarea y verá por qué está a esa hora. En grueso: lo que decide el servicio.',
  ends: (at, range) => (range ? `acaba ≈ ${at}, entre ${range}` : `acaba ${at}`),
  startedAt: (time) => `empezada ${time}`,
  doneAt: (time) => `hecha ${time}`,
  because: (time, title, why) => `${time} ${title}: ${why}`,
  plannedWas: (time) => `prevista a las ${time}`,
  decides: (services) => `${services} depende de ella`,
  pull: 'Sacar de la cámara',
  pieces: 'piezas',
  weight: 'peso',
  outBy: 'fuera a las',
  mixes: 'Mezclar',
  allergens: 'alérgenos',
  noAllergens: 'sin alérgenos nombrados',
};

/** @example deskWords.es.desk //=> 'Escritorio' */
export const deskWords: Readonly<Record<Language, DeskWords>> = { en: english, es: spanish };
