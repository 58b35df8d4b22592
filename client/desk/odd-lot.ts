import type { CutShown } from '../../shared/protocol/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { oddWords, sayOdd, sayOddTemp, sayOddWeight } from '../../shared/words/index.ts';
import type { TypedLot } from './typed-lot.ts';

type Received = Extract<TypedLot, { ok: true }>['lot'];

/** What is seldom so of a lot that came, in a sentence; null where it is like any other. */
export function oddLot(lot: Received, cuts: readonly CutShown[], say: Say): string | null {
  const words = oddWords[say.language];
  const cut = cuts.find((each) => each.cut === lot.cut);
  return sayOdd([
    cut ? sayOddWeight(lot, cut.usualKg, say) : null,
    lot.tempC === null ? words.noTemp : sayOddTemp(lot.tempC, say),
    lot.useBy === null ? words.noUseBy : null,
  ]);
}
