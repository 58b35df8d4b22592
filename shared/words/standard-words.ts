import type { Seconds } from '../kernel/index.ts';
import type { Language } from './say.ts';

/** The words on the sheet of a cut's standard. */
export type StandardWords = {
  standard(cut: string): string;
  readonly standards: string;
  readonly off: string;
  readonly stays: string;
  readonly right: string;
  readonly caution: string;
  weighs(piece: string, low: string, high: string): string;
  left(low: number, high: number): string;
  readonly byHand: string;
  /** Over what each move takes. */
  readonly usual: string;
  took(time: string): string;
  readonly train: string;
  readonly stopTraining: string;
  readonly tick: string;
  readonly again: string;
  readonly print: string;
  readonly close: string;
  /** To the list of screens. */
  readonly screens: string;
  /** To the head of the page. */
  readonly allCuts: string;
  readonly away: string;
  readonly none: string;
  readonly overrule: string;
};

const english: StandardWords = {
  standard: (cut) => `${cut}: the standard`,
  standards: 'How each cut is trimmed',
  off: 'Comes off',
  stays: 'Stays on',
  right: 'Right when',
  caution: 'Careful',
  weighs: (piece, low, high) => `A raw ${piece} weighs ${low} to ${high}`,
  left: (low, high) => `${low} to ${high} % of it is left`,
  byHand: 'Piece by piece',
  usual: 'usual time for one',
  took: (time) => `took ${time}`,
  train: 'Time yourself on one piece',
  stopTraining: 'Stop the watch',
  tick: 'done',
  again: 'Again',
  print: 'Print',
  close: 'Close',
  screens: 'All screens',
  allCuts: 'All cuts',
  away: 'The kitchen’s computer cannot be reached, and this sheet was not looked at before.',
  none: 'No standard is written for this cut. What the hands do is below.',
  overrule: 'Local codes and the licensed authority overrule what is written here.',
};

const spanish: StandardWords = {
  standard: (cut) => `${cut}: cómo debe quedar`,
  standards: 'Cómo se limpia cada corte',
  off: 'Se quita',
  stays: 'Se queda',
  right: 'Está bien cuando',
  caution: 'Cuidado',
  weighs: (piece, low, high) => `En crudo, ${piece}: de ${low} a ${high}`,
  left: (low, high) => `queda del ${low} al ${high} %`,
  byHand: 'Pieza por pieza',
  usual: 'lo usual por pieza',
  took: (time) => `tardó ${time}`,
  train: 'Tómese el tiempo con una pieza',
  stopTraining: 'Parar el reloj',
  tick: 'hecho',
  again: 'Otra vez',
  print: 'Imprimir',
  close: 'Cerrar',
  screens: 'Todas las pantallas',
  allCuts: 'Todos los cortes',
  away: 'No hay conexión con la computadora de la cocina y esta hoja no se había visto antes.',
  none: 'No está escrito cómo debe quedar este corte. Abajo está lo que hacen las manos.',
  overrule: 'Los reglamentos locales y la autoridad competente mandan sobre lo escrito aquí.',
};

/** @example standardWords.es.close //=> 'Cerrar' */
export const standardWords: Readonly<Record<Language, StandardWords>> = {
  en: english,
  es: spanish,
};

/**
 * What hands take for one piece: half a minute counts there, and no clock is meant.
 * @example handsTime(seconds(90)) //=> '1 min 30 s'
 */
export function handsTime(durationS: Seconds): string {
  const whole = Math.max(0, Math.round(durationS));
  const minutes = Math.floor(whole / 60);
  const rest = whole % 60;
  if (minutes === 0) return `${rest} s`;
  return rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
}
