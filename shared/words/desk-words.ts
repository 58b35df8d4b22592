import type { Language } from './say.ts';

/** The fixed words of the desk, which no other screen carries. */
export type DeskWords = {
  readonly desk: string;
  readonly sections: Record<DeskSectionName, string>;
  readonly allReady: string;
  forDay(day: string, plan: number): string;

  readonly pull: string;
  readonly pieces: string;
  readonly weight: string;
  readonly outBy: string;
  readonly mixes: string;
  readonly allergens: string;
  readonly noAllergens: string;
};

/** @see deskWords, in this order on the page */
export type DeskSectionName = 'day' | 'smokers' | 'plan' | 'pull' | 'log' | 'who';

const english: DeskWords = {
  desk: 'Desk',
  sections: {
    day: 'Day',
    smokers: 'Smokers',
    plan: 'Plan',
    pull: 'Pull list',
    log: 'Log',
    who: 'Who',
  },
  allReady: 'All services stand ready.',
  forDay: (day, plan) => `${day}, plan ${plan}`,
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
    plan: 'Plan',
    pull: 'Lista de saque',
    log: 'Registro',
    who: 'Quién',
  },
  allReady: 'Todos los servicios están listos.',
  forDay: (day, plan) => `${day}, plan ${plan}`,
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
