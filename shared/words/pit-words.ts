import type { Language } from './say.ts';

/** What is said of smokers, racks and cooks, which no wall of a station carries. */
export type PitWords = {
  readonly smokers: string;
  setTo(temp: string): string;
  readonly heatBelow: string;
  readonly heatAbove: string;
  readonly heatSide: string;
  /** Which side of a fat cap the heat comes to, beside an arrow that shows from where. */
  readonly fatDown: string;
  readonly fatUp: string;
  readonly free: string;
  freeTill(time: string): string;
  comesAt(pieces: string, time: string): string;
  thenComes(pieces: string, time: string): string;
  readonly off: string;
  core(temp: string): string;
  readonly coreReading: string;
  readonly notCalibrated: string;
  /** By how many finished cooks of this kitchen forecasts go, and how many are enough. */
  cooksOnRecord(cooks: number, enough: number): string;
  fireHotter(by: string): string;
  readonly wrapNow: string;
  inEarlier(by: string): string;
  readonly airReading: string;
  readonly whereTo: string;
  moveTo(place: string): string;
  readonly asking: string;
  readonly takeIt: string;
  readonly cannotAsk: string;
  /** In the place of a range's first time, once that is over. */
  readonly already: string;
};

const cooksEnglish = (cooks: number) => (cooks === 1 ? 'cook' : `${cooks} cooks`);

const english: PitWords = {
  smokers: 'Smokers',
  setTo: (temp) => `set ${temp}`,
  heatBelow: 'heat from below: fat side down',
  heatAbove: 'heat from above: fat side up',
  heatSide: 'heat from the side',
  fatDown: 'fat side down',
  fatUp: 'fat side up',
  free: 'free',
  freeTill: (time) => `free till ${time}`,
  comesAt: (pieces, time) => `${pieces} at ${time}`,
  thenComes: (pieces, time) => `then ${pieces}, ${time}`,
  off: 'off',
  core: (temp) => `core ${temp}`,
  coreReading: 'core reading',
  notCalibrated: 'rough: few cooks finished here yet',
  cooksOnRecord: (cooks, enough) =>
    cooks < enough
      ? `The times of cooks are rough until ${enough} have been finished here: ${cooks} so far.`
      : `The times of cooks go by the last ${cooksEnglish(cooks)} finished here.`,
  fireHotter: (by) => `if ${by} hotter`,
  wrapNow: 'if wrapped now',
  inEarlier: (by) => `if in ${by} earlier`,
  airReading: 'air reading',
  whereTo: 'Where to? Tap a rack.',
  moveTo: (place) => `move to ${place}`,
  asking: 'Working out what that does …',
  takeIt: 'take it',
  cannotAsk: 'The hub is not heard: what a move does cannot be worked out now.',
  already: 'now',
};

const cooksSpanish = (cooks: number) =>
  cooks === 1 ? 'la última cocción' : `las últimas ${cooks} cocciones`;

const spanish: PitWords = {
  smokers: 'Ahumadores',
  setTo: (temp) => `puesto a ${temp}`,
  heatBelow: 'calor de abajo: grasa abajo',
  heatAbove: 'calor de arriba: grasa arriba',
  heatSide: 'calor de lado',
  fatDown: 'grasa abajo',
  fatUp: 'grasa arriba',
  free: 'libre',
  freeTill: (time) => `libre hasta ${time}`,
  comesAt: (pieces, time) => `${pieces}, ${time}`,
  thenComes: (pieces, time) => `luego ${pieces}, ${time}`,
  off: 'sale',
  core: (temp) => `centro ${temp}`,
  coreReading: 'lectura del centro',
  notCalibrated: 'aproximado: aún pocas cocciones aquí',
  cooksOnRecord: (cooks, enough) =>
    cooks < enough
      ? `Las horas de cocción son aproximadas hasta terminar ${enough} aquí: van ${cooks}.`
      : `Las horas de cocción salen de ${cooksSpanish(cooks)} de aquí.`,
  fireHotter: (by) => `si ${by} más caliente`,
  wrapNow: 'si se envuelve ya',
  inEarlier: (by) => `si entra ${by} antes`,
  airReading: 'lectura del aire',
  whereTo: '¿Adónde? Toque una parrilla.',
  moveTo: (place) => `mover a ${place}`,
  asking: 'Calculando lo que eso cambia …',
  takeIt: 'hacerlo',
  cannotAsk: 'No se oye la central: ahora no se puede calcular lo que cambia.',
  already: 'ya',
};

/** @example pitWords.es.free //=> 'libre' */
export const pitWords: Readonly<Record<Language, PitWords>> = { en: english, es: spanish };
