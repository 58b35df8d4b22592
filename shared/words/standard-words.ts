import type { Language } from './say.ts';

/** The words on the sheet of a cut's standard. */
export type StandardWords = {
  standard(cut: string): string;
  readonly standards: string;
  readonly off: string;
  readonly stays: string;
  readonly right: string;
  weighs(piece: string, low: string, high: string): string;
  left(low: number, high: number): string;
  readonly byHand: string;
  usual(time: string): string;
  took(time: string): string;
  readonly train: string;
  readonly stopTraining: string;
  readonly tick: string;
  readonly again: string;
  readonly print: string;
  readonly close: string;
  readonly away: string;
  readonly none: string;
  readonly overrule: string;
};

const english: StandardWords = {
  standard: (cut) => `${cut}: the standard`,
  standards: 'Standards: how each cut is trimmed',
  off: 'Comes off',
  stays: 'Stays on',
  right: 'Right when',
  weighs: (piece, low, high) => `A raw ${piece} weighs ${low} to ${high}`,
  left: (low, high) => `${low} to ${high} % of it is left`,
  byHand: 'Piece by piece',
  usual: (time) => `usually ${time}`,
  took: (time) => `took ${time}`,
  train: 'Time yourself on one piece',
  stopTraining: 'Stop the watch',
  tick: 'done',
  again: 'Again',
  print: 'Print',
  close: 'Close',
  away: 'The hub cannot be reached, and this sheet was not looked at before.',
  none: 'No standard is written for this cut. What the hands do is below.',
  overrule: 'Local codes and the licensed authority overrule what is written here.',
};

const spanish: StandardWords = {
  standard: (cut) => `${cut}: la norma`,
  standards: 'Normas: cómo se limpia cada corte',
  off: 'Se quita',
  stays: 'Se queda',
  right: 'Está bien cuando',
  weighs: (piece, low, high) => `En crudo, ${piece}: de ${low} a ${high}`,
  left: (low, high) => `queda del ${low} al ${high} %`,
  byHand: 'Pieza por pieza',
  usual: (time) => `lo usual: ${time}`,
  took: (time) => `tardó ${time}`,
  train: 'Mida su tiempo con una pieza',
  stopTraining: 'Pare el reloj',
  tick: 'hecho',
  again: 'Otra vez',
  print: 'Imprimir',
  close: 'Cerrar',
  away: 'No se alcanza el servidor y esta hoja no se había visto antes.',
  none: 'No hay norma escrita para este corte. Abajo está lo que hacen las manos.',
  overrule: 'Los reglamentos locales y la autoridad competente mandan sobre lo escrito aquí.',
};

/** @example standardWords.es.close //=> 'Cerrar' */
export const standardWords: Readonly<Record<Language, StandardWords>> = {
  en: english,
  es: spanish,
};
