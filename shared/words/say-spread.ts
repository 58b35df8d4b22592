import type { Seconds } from '../kernel/index.ts';
import type { SpreadView } from '../view/index.ts';
import { durationWords } from './amounts.ts';
import { deskWords } from './desk-words.ts';
import type { Say } from './say.ts';

/**
 * What a service may yet have in hand, by how the cooks come out.
 * @example saySpread(spread, say) //=> 'as the cooks go, 8 of 10: 20 min late to 35 min to spare'
 */
export function saySpread(
  { lowS, highS }: Pick<SpreadView, 'lowS' | 'highS'>,
  { language }: Pick<Say, 'language'>,
): string {
  const words = deskWords[language].spread;
  const said = (inHandS: Seconds): string => {
    const minutes = Math.floor(inHandS / 60);
    if (minutes === 0) return words.nothing;
    return minutes > 0 ? words.inHand(durationWords(inHandS)) : words.short(durationWords(inHandS));
  };
  if (highS === null) return words.never;
  return lowS === null ? words.atBest(said(highS)) : words.between(said(lowS), said(highS));
}
