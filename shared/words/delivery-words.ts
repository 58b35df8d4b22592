import type { Instant } from '../kernel/index.ts';
import type { Came, PullRow } from '../view/index.ts';
import { durationWords, weight } from './amounts.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

/** The words for what came against the pull list, which only the desk carries. */
export type DeliveryWords = {
  readonly came: string;
  /** On the box under it, where nobody has said yet. */
  readonly sayIt: string;
  /** Said of a place to tap. */
  whatCame(cut: string): string;
  readonly pieces: string;
  readonly weight: string;
  asListed(pieces: number, weight: string): string;
  readonly keepIt: string;
  tooMuch(most: string): string;
  /** Of pieces that weigh nothing, and of a weight of no pieces. */
  readonly noWeight: string;
  readonly noPieces: string;
  count(pieces: number): string;
  amount(pieces: number, weight: string): string;
  short(pieces: number): string;
  readonly light: string;
  readonly heavy: string;
  lost(portions: number, batch: string): string;
  longer(by: string): string;
  readonly asOrdered: string;
  partOut(out: number, of: number): string;
  stillIn(pieces: number): string;
  /** Over what is all out, and over since when. */
  readonly out: string;
  readonly since: string;
};

const english: DeliveryWords = {
  came: 'came',
  sayIt: 'say what came',
  whatCame: (cut) => `say what came of ${cut}`,
  pieces: 'pieces',
  weight: 'weight',
  asListed: (pieces, amount) => `listed: ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}, ${amount}`,
  keepIt: 'this came',
  tooMuch: (most) => `no more than ${most}`,
  noWeight: 'it cannot weigh 0: type what it weighs, or 0 pieces',
  noPieces: '0 pieces weigh nothing: type how many came',
  count: (pieces) => (pieces === 1 ? '1 piece' : `${pieces} pieces`),
  amount: (pieces, amount) => `${english.count(pieces)} · ${amount}`,
  short: (pieces) => (pieces === 1 ? '1 piece short' : `${pieces} pieces short`),
  light: 'light',
  heavy: 'heavy',
  lost: (portions, batch) =>
    `${portions} ${portions === 1 ? 'portion' : 'portions'} fewer of ${batch}`,
  longer: (by) => `trimming takes ${by} longer`,
  asOrdered: 'as listed',
  partOut: (out, of) => `${out} of ${of} out`,
  stillIn: (pieces) => `${pieces} still in the cooler`,
  out: 'Out of the cooler',
  since: 'since',
};

const spanish: DeliveryWords = {
  came: 'llegó',
  sayIt: 'anotar lo que llegó',
  whatCame: (cut) => `anotar lo que llegó de ${cut}`,
  pieces: 'piezas',
  weight: 'peso',
  asListed: (pieces, amount) =>
    `en la lista: ${pieces} ${pieces === 1 ? 'pieza' : 'piezas'}, ${amount}`,
  keepIt: 'llegó esto',
  tooMuch: (most) => `no más de ${most}`,
  noWeight: 'no puede pesar 0: anote cuánto pesa, o 0 piezas',
  noPieces: '0 piezas no pesan nada: anote cuántas llegaron',
  count: (pieces) => (pieces === 1 ? '1 pieza' : `${pieces} piezas`),
  amount: (pieces, amount) => `${spanish.count(pieces)} · ${amount}`,
  short: (pieces) => (pieces === 1 ? 'falta 1 pieza' : `faltan ${pieces} piezas`),
  light: 'pesa menos',
  heavy: 'pesa más',
  lost: (portions, batch) =>
    `${portions} ${portions === 1 ? 'porción' : 'porciones'} menos de ${batch}`,
  longer: (by) => `limpiar lleva ${by} más`,
  asOrdered: 'según la lista',
  partOut: (out, of) => `${out} de ${of} fuera`,
  stillIn: (pieces) => `${pieces} todavía en la cámara`,
  out: 'Ya fuera de la cámara',
  since: 'desde',
};

/** @example deliveryWords.en.keepIt //=> 'this came' */
export const deliveryWords: Readonly<Record<Language, DeliveryWords>> = {
  en: english,
  es: spanish,
};

/** A piece that is off by less than this is as it was listed: scales and cuts differ. */
const AS_LISTED = 0.02;

/** What a delivery did to its line, as one line: what it lacks, and what that costs. */
export function sayCame(row: Pick<PullRow, 'pieces' | 'weightKg'>, came: Came, say: Say): string {
  const words = deliveryWords[say.language];
  const missing = row.pieces - came.pieces;
  const heaviness =
    came.pieces === 0 ? 1 : came.weightKg / came.pieces / (row.weightKg / row.pieces);
  const { lost, longerS } = came.effect ?? { lost: [], longerS: 0 };
  const said = [
    missing > 0 && words.short(missing),
    heaviness < 1 - AS_LISTED && words.light,
    heaviness > 1 + AS_LISTED && words.heavy,
    ...lost.map(({ portions, batch }) => words.lost(portions, textIn(batch, say))),
    longerS >= 60 && came.effect && words.longer(durationWords(came.effect.longerS)),
  ].filter((each) => typeof each === 'string');
  return said.join('; ') || words.asOrdered;
}

/**
 * How much of a line is out, where only some is, and how much should be and is not.
 * @example sayOut(row, now, say) //=> '6 of 15 out, 9 still in the cooler'
 */
export function sayOut(
  { pieces, outPieces, byAt }: Pick<PullRow, 'pieces' | 'outPieces' | 'byAt'>,
  now: Instant | null,
  { language }: Say,
): string {
  const words = deliveryWords[language];
  const isLate = now !== null && byAt <= now && outPieces < pieces;
  return [
    outPieces > 0 && outPieces < pieces && words.partOut(outPieces, pieces),
    isLate && words.stillIn(pieces - outPieces),
  ]
    .filter((each) => typeof each === 'string')
    .join(', ');
}

/** @example sayAmount(row, say) //=> '12 · 84 lb' */
export const sayAmount = (
  { pieces, weightKg }: Pick<Came, 'pieces' | 'weightKg'>,
  say: Say,
): string => deliveryWords[say.language].amount(pieces, weight(weightKg, say));
