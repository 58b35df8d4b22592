import type { Instant } from '../../shared/kernel/index.ts';
import type { LeftInPan, PassLine } from '../../shared/view/index.ts';
import {
  nearClock,
  nearRange,
  type PassWords,
  passWords,
  type Say,
} from '../../shared/words/index.ts';

/** What is said of a dish; what presses is minded, what is as it should be is soft. */
export type Said = { readonly said: string; readonly how: 'mind' | 'cut' | 'plain' | 'soft' };

type Seen = {
  readonly say: Say;
  readonly now: Instant;
  /** Whether it is being sold now. */
  readonly open: boolean;
};

/** A dish of which nothing is cut while it is sold needs a hand; so does what is held too long. */
const SOON_MS = 15 * 60_000;

const wordsOf = ({ say }: Seen): PassWords => passWords[say.language];
const minded = (said: string): Said => ({ said, how: 'mind' });
const soft = (said: string): Said => ({ said, how: 'soft' });

const clock = (at: Instant, { say, now }: Seen) => nearClock(at, now, say);

/** What is in a pan, and till when. */
export function sayPan({ pan: { heldUntil, stage, barred }, left }: LeftInPan, seen: Seen): Said {
  const words = wordsOf(seen);
  if (barred) return minded(words.barred(left, barred));
  const isSoon = heldUntil !== null && heldUntil - seen.now < SOON_MS;
  if (stage === 'held' && (heldUntil === null || heldUntil > seen.now)) {
    const said = words.toCut(left, heldUntil && clock(heldUntil, seen));
    return isSoon ? minded(said) : { said, how: 'cut' };
  }
  if (heldUntil === null) return soft(words.heldFree(left));
  if (heldUntil <= seen.now) return minded(words.holdOver(left));
  const said = words.heldTill(left, clock(heldUntil, seen));
  return isSoon ? minded(said) : soft(said);
}

/** What will come of a dish at this service; that nothing is ready its figure says. */
export function sayOutcome(line: PassLine, seen: Seen): Said | null {
  const words = wordsOf(seen);
  const { dish, runsOut, empty } = line;
  if (dish.soldOutAt !== null) return minded(words.soldOutSince(clock(dish.soldOutAt, seen)));
  if (mustCut(line, seen)) return minded(words.cutNow);
  if (!runsOut) return empty ? null : soft(words.lasts);
  const { at, missing } = runsOut;
  return minded((empty ? words.shortFrom : words.runsOut)(clock(at, seen), missing));
}

export const saySold = ({ dish: { sold } }: PassLine, seen: Seen): Said =>
  soft(wordsOf(seen).sold(sold));

/** What comes next of a dish, and between when and when; or that nothing does. */
export function sayNext({ next: pan, empty }: PassLine, seen: Seen): Said {
  const { first, next, noNext } = wordsOf(seen);
  if (!pan) return soft(noNext);
  const { readyLowAt, readyHighAt, portions } = pan;
  const when = nearRange([readyLowAt, readyHighAt], seen.now, seen.say);
  return { said: (empty === 'before' ? first : next)(portions, when), how: 'plain' };
}

/** All that is said of it where there is little room: what presses comes first. */
export function sayInShort(line: PassLine, seen: Seen): Said[] {
  const { dish, pans, next, runsOut, empty } = line;
  const presses = runsOut !== null || dish.soldOutAt !== null || mustCut(line, seen);
  // What may not go out is said before what that makes of the service.
  const barred = pans.find(({ pan }) => pan.barred);
  const first = pans.find(({ pan }) => !pan.barred);
  const others = pans.filter((each) => each !== barred && each !== first);
  return [
    barred && sayPan(barred, seen),
    presses && sayOutcome(line, seen),
    first && sayPan(first, seen),
    (next || empty === 'after') && sayNext(line, seen),
    ...others.slice(0, 1).map((left) => sayPan(left, seen)),
    dish.sold > 0 && saySold(line, seen),
  ].filter((each) => !!each);
}

export const mustCut = ({ ready, held, dish }: PassLine, { open }: Pick<Seen, 'open'>): boolean =>
  open && ready === 0 && held > 0 && dish.soldOutAt === null;

export const isOver = ({ pans }: PassLine, { now }: Pick<Seen, 'now'>): boolean =>
  pans.some(
    ({ pan: { heldUntil, barred } }) => barred !== null || (heldUntil !== null && heldUntil <= now),
  );
