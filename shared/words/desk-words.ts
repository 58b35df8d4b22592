import type { LogKind } from '../view/index.ts';
import type { Language } from './say.ts';

/** The fixed words of the desk, which no other screen carries. */
export type DeskWords = {
  readonly desk: string;
  readonly sections: Record<DeskSectionName, string>;
  /** No service is still to come. */
  readonly allOver: string;
  readonly standing: StandingWords;
  forDay(day: string, plan: number): string;
  readonly log: {
    readonly newestFirst: string;
    readonly look: string;
    readonly all: string;
    readonly kinds: Record<LogKind, string>;
    readonly people: string;
    readonly none: string;
  };

  readonly dayChart: string;
  isOut(name: string): string;
  readonly nearer: string;
  readonly further: string;
  readonly toNow: string;
  readonly toSmokers: string;
  readonly toCrew: string;
  readonly onPaper: string;
  paperKept(file: string): string;
  /** What somebody is at, and what comes next. */
  till(what: string, time: string): string;
  next(time: string, what: string): string;
  readonly nothingMore: string;
  nothingMoreFor(names: string): string;
  racks(count: number): string;
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

/** How a service stands, and what the cooks may yet make of it. */
type StandingWords = {
  opens(service: string, at: string): string;
  open(service: string, till: string): string;
  readonly ready: string;
  inHand(time: string): string;
  short(time: string): string;
  readonly nothing: string;
  likely(inHand: string): string;
  /** In more than half of all cases it never is. */
  readonly never: string;
  /** Of a service that is open: what of it does not stand ready yet. */
  toCome(stands: string): string;
  /** In eight of ten cases. */
  between(low: string, high: string): string;
  /** In more than one of ten cases it never is. */
  atBest(high: string): string;
  planned(inHand: string): string;
};

/** @see deskWords, in this order on the page */
export type DeskSectionName =
  | 'day'
  | 'smokers'
  | 'safety'
  | 'pull'
  | 'mend'
  | 'plan'
  | 'close'
  | 'record'
  | 'log'
  | 'who';

const english: DeskWords = {
  desk: 'Desk',
  sections: {
    day: 'Day',
    smokers: 'Smokers',
    safety: 'Safety',
    pull: 'Pull list',
    mend: 'Mend',
    plan: 'Plan',
    close: 'Close',
    record: 'Record',
    log: 'Log',
    who: 'Who',
  },
  allOver: 'No service to come today.',
  standing: {
    opens: (service, at) => `${service} ${at}`,
    open: (service, till) => `${service}, open till ${till}`,
    ready: 'all ready',
    inHand: (time) => `${time} to spare`,
    short: (time) => `${time} late`,
    nothing: 'nothing to spare',
    likely: (inHand) => `likely ${inHand}`,
    never: 'likely never ready',
    toCome: (stands) => `still to come: ${stands}`,
    between: (low, high) => `${low} to ${high}`,
    atBest: (high) => `at best ${high}, and it may never be ready`,
    planned: (inHand) => `if no cook runs long: ${inHand}`,
  },
  forDay: (day, plan) => `${day}, plan ${plan}`,
  log: {
    newestFirst: 'Newest first.',
    look: 'show',
    all: 'everything',
    kinds: {
      work: 'who did what',
      readings: 'readings and checks',
      food: 'what came in and went out',
      house: 'plans and screens',
    },
    people: 'by whom',
    none: 'None of that today.',
  },
  dayChart: 'The day on ruled time: arrows move it, plus and minus bring it nearer and further',
  isOut: (name) => `${name} · out`,
  nearer: 'nearer',
  further: 'further',
  toNow: 'to now',
  toSmokers: 'to the smokers',
  toCrew: 'to the crew',
  onPaper: 'on paper',
  paperKept: (file) => `${file} is among the downloads: open it and print it.`,
  till: (what, time) => `${what} till ${time}`,
  next: (time, what) => `${time} ${what}`,
  nothingMore: 'nothing more planned',
  nothingMoreFor: (names) => `Nothing more planned: ${names}`,
  racks: (count) => `${count} ${count === 1 ? 'rack' : 'racks'}`,
  pickOne: 'Tap a task to see why it is at that time. Heavy outline: a service waits for it.',
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
    pull: 'Por sacar',
    mend: 'Arreglo',
    plan: 'Plan',
    close: 'Cierre',
    record: 'Registro',
    log: 'Bitácora',
    who: 'Quién',
  },
  allOver: 'Hoy ya no falta ningún servicio.',
  standing: {
    opens: (service, at) => `${service} ${at}`,
    open: (service, till) => `${service}, abierto hasta ${till}`,
    ready: 'todo listo',
    inHand: (time) => `${time} de margen`,
    short: (time) => `${time} tarde`,
    nothing: 'sin margen',
    likely: (inHand) => `probable: ${inHand}`,
    never: 'probable: nunca listo',
    toCome: (stands) => `lo que falta: ${stands}`,
    between: (low, high) => `de ${low} a ${high}`,
    atBest: (high) => `en el mejor caso ${high}, y quizá nunca esté listo`,
    planned: (inHand) => `si ninguna cocción se alarga: ${inHand}`,
  },
  forDay: (day, plan) => `${day}, plan ${plan}`,
  log: {
    newestFirst: 'Lo último va primero.',
    look: 'ver',
    all: 'todo',
    kinds: {
      work: 'quién hizo qué',
      readings: 'lecturas y revisiones',
      food: 'lo que entró y salió',
      house: 'planes y pantallas',
    },
    people: 'por persona',
    none: 'Hoy, nada de eso.',
  },
  dayChart: 'El día sobre las horas: las flechas lo mueven, más y menos lo acercan y alejan',
  isOut: (name) => `${name} · fuera`,
  nearer: 'más cerca',
  further: 'más lejos',
  toNow: 'ver ahora',
  toSmokers: 'a los ahumadores',
  toCrew: 'al personal',
  onPaper: 'en papel',
  paperKept: (file) => `${file} está entre las descargas: ábralo e imprímalo.`,
  till: (what, time) => `${what} hasta ${time}`,
  next: (time, what) => `${time} ${what}`,
  nothingMore: 'nada más previsto',
  nothingMoreFor: (names) => `Nada más previsto: ${names}`,
  racks: (count) => `${count} ${count === 1 ? 'parrilla' : 'parrillas'}`,
  pickOne: 'Toque una tarea y verá por qué va a esa hora. Trazo grueso: un servicio la espera.',
  ends: (at, range) => (range ? `acaba ≈ ${at}, entre ${range}` : `acaba ${at}`),
  startedAt: (time) => `empezada ${time}`,
  doneAt: (time) => `hecha ${time}`,
  because: (time, title, why) => `${time} ${title}: ${why}`,
  plannedWas: (time) => `prevista: ${time}`,
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
