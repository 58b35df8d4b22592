import {
  type Celsius,
  celsius,
  type Instant,
  type Kilograms,
  type LocalDay,
  wallTime,
} from '../../shared/kernel/index.ts';
import type { Intent } from '../../shared/view/index.ts';
import { MOST_KG, MOST_PIECES, PROBE_HIGH_C, PROBE_LOW_C } from '../../shared/view/index.ts';
import {
  recordDeskWords,
  type Say,
  sayDay,
  temperature,
  weight,
} from '../../shared/words/index.ts';

type Received = Omit<Extract<Intent, { kind: 'receive' }>, 'kind'>;

/** What was typed of a lot, or the first field that cannot be so and why. */
export type TypedLot =
  | { readonly ok: true; readonly lot: Received }
  | { readonly ok: false; readonly field: string; readonly why: string };

type Units = {
  readonly say: Say;
  readonly now: Instant;
  /** From the kitchen's units; null where what was typed is no number. */
  readonly kgOf: (typed: string) => Kilograms | null;
  readonly celsiusOf: (typed: string) => Celsius | null;
};

/** Reads what was typed, by the names of its fields. */
export function typedLot(word: (name: string) => string, units: Units): TypedLot {
  const { say, now } = units;
  const words = recordDeskWords[say.language].wrong;
  const wrong = (field: string, why: string): TypedLot => ({ ok: false, field, why });
  const pieces = Number(word('pieces') || Number.NaN);
  if (!Number.isInteger(pieces) || pieces < 1 || pieces > MOST_PIECES) {
    return wrong('pieces', words.pieces(MOST_PIECES.toLocaleString(say.language)));
  }
  const weightKg = units.kgOf(word('weight'));
  if (weightKg === null || weightKg <= 0 || weightKg > MOST_KG) {
    return wrong('weight', words.weight(weight(MOST_KG, say)));
  }
  if (word('supplier') === '') return wrong('supplier', words.supplier);
  const tempC = units.celsiusOf(word('temp'));
  const isTyped = word('temp') !== '';
  if (isTyped && (tempC === null || tempC < PROBE_LOW_C || tempC > PROBE_HIGH_C)) {
    const [low, high] = [celsius(PROBE_LOW_C), celsius(PROBE_HIGH_C)];
    return wrong('temp', words.temp(temperature(low, say), temperature(high, say)));
  }
  const useBy = word('useBy') as LocalDay | '';
  const today = wallTime(now, say.zone).day;
  if (useBy !== '' && useBy < today) return wrong('useBy', words.useBy(sayDay(today, say)));
  const cut = word('cut') as Received['cut'];
  const [supplier, code] = [word('supplier'), word('code') || null];
  return { ok: true, lot: { cut, pieces, weightKg, supplier, tempC, useBy: useBy || null, code } };
}
