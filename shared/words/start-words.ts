import type { Language } from './say.ts';

/** What a screen can be put up as; stations are named by their kitchen. */
export type StartGroup = 'stations' | 'pit' | 'pass' | 'desk' | 'phone' | 'learn';

/** Who stands before a screen. */
type Grouped = { readonly name: string; readonly who: string };

/** The page on which a screen is put up: what it shows, and how it hangs. */
export type StartWords = {
  readonly whichScreen: string;
  readonly tapOne: string;
  readonly goBack: string;
  readonly goesBack: string;
  readonly groups: Readonly<Record<StartGroup, Grouped>>;
  /** What is tapped to open one; a station has the name that its kitchen gives it. */
  readonly screens: Readonly<Record<Exclude<StartGroup, 'stations'>, string>>;
  /** A station that is called as another screen is. */
  workAt(station: string): string;
  readonly severalStations: string;
  readonly whosePhone: string;
  readonly whichStations: string;
  readonly openIt: string;

  readonly asItHangs: string;
  readonly size: string;
  readonly across: string;
  readonly away: string;
  readonly units: Readonly<Record<'inches' | 'feet' | 'centimetres' | 'metres', string>>;
  readonly whyMeasure: string;
  readonly bothNeeded: string;
  readonly cannotBe: string;
  readonly whoseHands: string;
  readonly hands: Readonly<Record<'anybody' | 'raw' | 'clean', string>>;
  readonly whyHands: string;
  readonly lightOrDark: string;
  readonly light: string;
  readonly dark: string;
  readonly byClock: string;
  readonly whyByClock: string;
  readonly fullScreen: string;
  readonly no: string;
  readonly onFirstTap: string;
  readonly whyFull: string;
  readonly sounds: string;
  readonly silent: string;
  readonly soundsCalls: string;
  readonly bringTablet: string;
};

const english: StartWords = {
  whichScreen: 'Which screen is this?',
  tapOne: 'Tap one. To come back later: its name at the top left, then “other screen”.',
  goBack: 'Back to the screen that was here',
  goesBack: 'Left alone, this page goes back by itself in three minutes.',
  groups: {
    stations: {
      name: 'Stations',
      who: 'At a table: what to do now, what is next.',
    },
    pit: { name: 'Pit', who: 'At the smokers: what lies in them, and when it is due.' },
    pass: {
      name: 'Pass',
      who: 'Where food is carved and served: what can be sold.',
    },
    desk: { name: 'Desk', who: 'For whoever runs the day: plan, checks, lots, people.' },
    phone: {
      name: 'Phone',
      who: 'One person’s own: what is tapped there is theirs.',
    },
    learn: { name: 'Standards', who: 'To learn: how each cut is trimmed.' },
  },
  screens: {
    pit: 'Smokers',
    pass: 'What is ready',
    desk: 'Desk',
    phone: 'Choose the person',
    learn: 'All cuts',
  },
  workAt: (station) => `${station}: work to do`,
  severalStations: 'Several on one screen',
  whosePhone: 'Whose phone?',
  whichStations: 'Which stations?',
  openIt: 'Open',
  asItHangs: 'How it hangs and who taps it',
  size: 'Size and distance',
  across: 'corner to corner',
  away: 'read from',
  units: { inches: 'inches', feet: 'feet', centimetres: 'centimeters', metres: 'meters' },
  whyMeasure:
    'Measure both, and letters are large enough to be read from there, and boxes for a glove. ' +
    'Without them they follow the width of the window.',
  bothNeeded: 'Now the other one: it takes both.',
  cannotBe: 'No screen is like that: look at both numbers.',
  whoseHands: 'Whose hands tap it',
  hands: { anybody: 'anybody’s', raw: 'raw meat', clean: 'clean' },
  whyHands: 'Where raw and clean would meet, it says: wash hands, new gloves.',
  lightOrDark: 'Light or dark',
  light: 'light',
  dark: 'dark',
  byClock: 'by the clock',
  whyByClock: 'By the clock it is dark from 8 in the evening to 6 in the morning.',
  fullScreen: 'Full screen',
  no: 'no',
  onFirstTap: 'at the first tap',
  whyFull: 'The browser’s bars go away at the first tap on a wall.',
  sounds: 'Sound, at the pit or the desk',
  silent: 'silent',
  soundsCalls: 'when somebody is called',
  bringTablet: 'Connect another tablet or phone',
};

const spanish: StartWords = {
  whichScreen: '¿Qué pantalla es esta?',
  tapOne: 'Toque una. Para volver aquí: su nombre, arriba a la izquierda, y luego «otra pantalla».',
  goBack: 'Volver a la pantalla que estaba aquí',
  goesBack: 'Si nadie la toca, esta página regresa sola en tres minutos.',
  groups: {
    stations: {
      name: 'Estaciones',
      who: 'En la mesa: qué hacer ahora y qué sigue.',
    },
    pit: { name: 'Ahumado', who: 'Junto al fuego: qué hay adentro y cuándo sale.' },
    pass: {
      name: 'Pase',
      who: 'Donde se rebana y se sirve: qué se puede vender.',
    },
    desk: {
      name: 'Escritorio',
      who: 'Para quien lleva el día: plan, revisiones, lotes, gente.',
    },
    phone: {
      name: 'Celular',
      who: 'De una sola persona: lo que toca queda a su nombre.',
    },
    learn: { name: 'Guía', who: 'Para aprender: cómo se limpia cada corte.' },
  },
  screens: {
    pit: 'Ahumadores',
    pass: 'Lo que está listo',
    desk: 'Escritorio',
    phone: 'Elegir a la persona',
    learn: 'Todos los cortes',
  },
  workAt: (station) => `${station}: trabajo por hacer`,
  severalStations: 'Varias en una pantalla',
  whosePhone: '¿De quién es el celular?',
  whichStations: '¿Qué estaciones?',
  openIt: 'Abrir',
  asItHangs: 'Cómo está puesta y quién la toca',
  size: 'Tamaño y distancia',
  across: 'esquina a esquina',
  away: 'se lee a',
  units: { inches: 'pulgadas', feet: 'pies', centimetres: 'centímetros', metres: 'metros' },
  whyMeasure:
    'Mida las dos cosas: así la letra se lee desde ahí y los botones sirven con guantes. ' +
    'Sin medidas, todo va según el ancho de la ventana.',
  bothNeeded: 'Ahora la otra medida: hacen falta las dos.',
  cannotBe: 'No hay pantalla así: revise los dos números.',
  whoseHands: 'Quién la toca',
  hands: { anybody: 'cualquiera', raw: 'carne cruda', clean: 'manos limpias' },
  whyHands: 'Donde se cruzarían crudo y limpio, avisa: lavarse las manos, guantes nuevos.',
  lightOrDark: 'Clara u oscura',
  light: 'clara',
  dark: 'oscura',
  byClock: 'según la hora',
  whyByClock: 'Según la hora: oscura de 8 de la noche a 6 de la mañana.',
  fullScreen: 'Pantalla completa',
  no: 'no',
  onFirstTap: 'al primer toque',
  whyFull: 'Las barras del navegador se quitan al primer toque.',
  sounds: 'Sonido, en los ahumadores o el escritorio',
  silent: 'en silencio',
  soundsCalls: 'cuando se llama a alguien',
  bringTablet: 'Conectar otra tableta o celular',
};

/** @example startWords.es.fullScreen //=> 'Pantalla completa' */
export const startWords: Readonly<Record<Language, StartWords>> = { en: english, es: spanish };
