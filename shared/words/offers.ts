import { type Seconds, seconds } from '../kernel/index.ts';
import type { MoveOffer } from '../view/index.ts';
import { clockTime, countPieces, durationWords, wholeMinutes } from './amounts.ts';
import { offerWords } from './offer-words.ts';
import { saySlot } from './reasons.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';

/**
 * What a slot move does, in short sentences: which loads, which services gain or lose, what else
 * shifts.
 */
export function sayOffer(offer: MoveOffer, say: Say): string[] {
  const words = offerWords[say.language];
  const moves = offer.moves.map((move) =>
    words.moves(
      countPieces(move.pieces, move.piece, say),
      saySlot(move.from, say),
      saySlot(move.to, say),
    ),
  );
  const fat = offer.fatSide && (offer.fatSide === 'down' ? words.fatDown : words.fatUp);
  const services = offer.services.map(({ name, opensAt, beforeS, afterS }) => {
    const service = `${textIn(name, say)} ${clockTime(opensAt, say)}`;
    const same = Math.abs(afterS - beforeS) < 60;
    if (same) return words.serviceSame(service, sayMargin(afterS, say));
    return words.serviceChange(service, sayMargin(beforeS, say), sayMargin(afterS, say));
  });
  const shifts =
    offer.tasksChanged === 0 ? words.nothingElse : words.tasksChange(offer.tasksChanged);
  const { unlit } = offer;
  const cold = unlit && words.unlit(textIn(unlit.name, say), durationWords(unlit.preheatS));
  const there = [fat, cold].flatMap((each) => (each ? [each] : []));
  return [[...moves, ...there].join('; '), ...services, shifts];
}

/** @example sayMargin(minutes(40), say) //=> '40 min to spare' */
export function sayMargin(inHandS: Seconds, say: Say): string {
  const { inHand, short } = offerWords[say.language];
  const minutes = wholeMinutes(inHandS);
  if (minutes === 0) return inHand(durationWords(seconds(0)));
  return minutes < 0 ? short(durationWords(inHandS)) : inHand(durationWords(inHandS));
}
