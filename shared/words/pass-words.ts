import type { CheckKind } from '../view/index.ts';
import type { Language } from './say.ts';

type Bar = { readonly why: 'failed' | 'missed'; readonly check: CheckKind };

type Bars = {
  /** What somebody found to be wrong. */
  readonly failed: Readonly<Record<CheckKind, string>>;
  /** Nobody looked in time: what to do, or what time itself has made wrong. */
  readonly missed: Readonly<Partial<Record<CheckKind, string>>> & { readonly other: string };
};

const whyBarred = ({ why, check }: Bar, { failed, missed }: Bars): string =>
  why === 'failed' ? failed[check] : (missed[check] ?? missed.other);

/** The fixed words of the pass, which no other screen carries. */
export type PassWords = {
  readonly pass: string;
  readonly ready: string;
  /** Of a single portion. */
  readonly readyOne: string;
  /** Allergens of a dish. */
  has(allergens: string): string;
  /** Where there is no room to name them. */
  hasMany(count: number): string;
  /** In place of one of two places to tap: no longer than it has to be. */
  readonly undo: string;
  /** In the cabinet, and not yet cut or set out. */
  held(portions: number, till: string | null): string;
  /** Why they may not go out, in the two or three words that are read from where one carves. */
  barred(portions: number, bar: Bar): string;
  /** Ready, and till when. */
  readyTill(portions: number, time: string): string;
  readyFree(portions: number): string;
  /** Of more that are ready the first to go, and till when. */
  goesFirst(portions: number, time: string): string;
  holdOver(portions: number): string;
  next(portions: number, when: string): string;
  /** The same of the first of a dish. */
  first(portions: number, when: string): string;
  readonly noNext: string;
  /** Runs out, and from when there is some again. */
  outTill(time: string, next: string): string;
  /** The same of a dish of which nothing is there yet: from when it is asked for. */
  shortTill(time: string, next: string): string;
  shortFrom(time: string, missing: number): string;
  runsOut(time: string, missing: number): string;
  readonly lasts: string;
  soldOutSince(time: string): string;
  sold(portions: number): string;
  /** Said of a place to tap. */
  soldMore(portions: number, dish: string): string;
  readonly oneLess: string;
  panEmpty(portions: number, till: string | null): string;
  readonly soldOut: string;
  /** Opens what makes it fewer: a pan that is empty, one too many counted, sold out. */
  readonly less: string;
  readonly noService: string;
};

const englishBars: Bars = {
  failed: {
    receiving: 'came too warm',
    'end-temperature': 'not done',
    'hot-hold': 'too cold',
    'cold-hold': 'lay too warm',
    cooling: 'cooled too slowly',
    reheat: 'to be reheated',
    'discard-time': 'too old',
    'out-of-temperature': 'out too long',
    thermometer: 'thermometer wrong',
    clean: 'table not washed',
  },
  missed: {
    'discard-time': 'too old',
    'out-of-temperature': 'out too long',
    clean: 'table not washed',
    other: 'probe it',
  },
};

const english: PassWords = {
  pass: 'Pass',
  has: (allergens) => `has ${allergens}`,
  hasMany: (count) => `${count} ${count === 1 ? 'allergen' : 'allergens'}`,
  ready: 'ready',
  readyOne: 'ready',
  undo: 'undo',
  barred: (portions, bar) => `${portions} barred: ${whyBarred(bar, englishBars)}`,
  held: (portions, till) => `${portions} held${till ? ` till ${till}` : ''}`,
  readyTill: (portions, time) => `${portions} till ${time}`,
  goesFirst: (portions, time) => `${portions} first, till ${time}`,
  readyFree: (portions) => `${portions}, no time limit`,
  holdOver: (portions) => `${portions} too long: check`,
  next: (portions, when) => `next ${portions} at ${when}`,
  first: (portions, when) => `first ${portions} at ${when}`,
  noNext: 'no more to come',
  outTill: (time, next) => `out ${time}, next ${next}`,
  shortTill: (time, next) => `short ${time}, next ${next}`,
  shortFrom: (time, missing) => `${missing} short from ${time}`,
  runsOut: (time, missing) => `out at ${time}, ${missing} short`,
  lasts: 'lasts to the close',
  soldOutSince: (time) => `sold out since ${time}`,
  sold: (portions) => `${portions} sold`,
  soldMore: (portions, dish) => `${portions} more sold: ${dish}`,
  oneLess: 'one sold fewer',
  panEmpty: (portions, till) => `${portions}${till ? ` till ${till}` : ''}: empty`,
  soldOut: 'sold out',
  less: 'less',
  noService: 'The last service of the day is over.',
};

const spanishBars: Bars = {
  failed: {
    receiving: 'llegaron calientes',
    'end-temperature': 'sin terminar',
    'hot-hold': 'frías',
    'cold-hold': 'mal enfriadas',
    cooling: 'enfriadas despacio',
    reheat: 'por recalentar',
    'discard-time': 'pasadas',
    'out-of-temperature': 'mucho tiempo fuera',
    thermometer: 'termómetro malo',
    clean: 'mesa sin lavar',
  },
  missed: {
    'discard-time': 'pasadas',
    'out-of-temperature': 'mucho tiempo fuera',
    clean: 'mesa sin lavar',
    other: 'sondee',
  },
};

const spanish: PassWords = {
  pass: 'Pase',
  has: (allergens) => `lleva ${allergens}`,
  hasMany: (count) => `${count} ${count === 1 ? 'alérgeno' : 'alérgenos'}`,
  ready: 'listas',
  readyOne: 'lista',
  undo: 'atrás',
  barred: (portions, bar) =>
    `${portions} no ${portions === 1 ? 'sale' : 'salen'}: ${whyBarred(bar, spanishBars)}`,
  held: (portions, till) => `${portions} en espera${till ? ` hasta ${till}` : ''}`,
  readyTill: (portions, time) => `${portions} hasta ${time}`,
  goesFirst: (portions, time) => `${portions} primero, hasta ${time}`,
  readyFree: (portions) => `${portions} sin hora límite`,
  holdOver: (portions) => `${portions} ${portions === 1 ? 'pasada' : 'pasadas'}: revise`,
  next: (portions, when) => `luego ${portions}: ${when}`,
  first: (portions, when) => `${portions === 1 ? 'primera' : 'primeras'} ${portions}: ${when}`,
  noNext: 'no viene más',
  outTill: (time, next) => `acaba ${time}, sigue ${next}`,
  shortTill: (time, next) => `falta ${time}, sigue ${next}`,
  shortFrom: (time, missing) => `${missing === 1 ? 'falta' : 'faltan'} ${missing} desde ${time}`,
  runsOut: (time, missing) => `se acaba ${time}, ${missing === 1 ? 'falta' : 'faltan'} ${missing}`,
  lasts: 'alcanza hasta el cierre',
  soldOutSince: (time) => `agotado desde ${time}`,
  sold: (portions) => `${portions} ${portions === 1 ? 'vendida' : 'vendidas'}`,
  soldMore: (portions, dish) =>
    `${portions} más ${portions === 1 ? 'vendida' : 'vendidas'}: ${dish}`,
  oneLess: 'una vendida menos',
  panEmpty: (portions, till) => `${portions}${till ? ` hasta ${till}` : ''}: vacía`,
  soldOut: 'agotado',
  less: 'reste',
  noService: 'El último servicio del día terminó.',
};

/** @example passWords.es.pass //=> 'Pase' */
export const passWords: Readonly<Record<Language, PassWords>> = { en: english, es: spanish };
