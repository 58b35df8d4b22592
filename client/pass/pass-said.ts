import type { Instant } from '../../shared/kernel/index.ts';
import { must } from '../../shared/kernel/index.ts';
import type { LeftInPan, PassLine, PassPan } from '../../shared/view/index.ts';
import {
  nearClock,
  nearRange,
  type PassWords,
  passWords,
  type Say,
  textIn,
} from '../../shared/words/index.ts';

/** What is said of a dish; what presses is minded, what is as it should be is soft. */
export type Said = { readonly said: string; readonly how: 'mind' | 'held' | 'plain' | 'soft' };

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
    const said = words.held(left, heldUntil && clock(heldUntil, seen));
    return isSoon ? minded(said) : { said, how: 'held' };
  }
  if (heldUntil === null) return soft(words.readyFree(left));
  if (heldUntil <= seen.now) return minded(words.holdOver(left));
  const said = words.readyTill(left, clock(heldUntil, seen));
  return isSoon ? minded(said) : soft(said);
}

/** Of times beside each other the last says the half of the day where it is the same. */
export function halfOnce(all: readonly Said[]): readonly Said[] {
  const half = / [ap]m$/;
  if (new Set(all.map(({ said }) => half.exec(said)?.[0])).size > 1) return all;
  return all.map((each, i) =>
    i < all.length - 1 ? { ...each, said: each.said.replace(half, '') } : each,
  );
}

/** What will come of a dish at this service; that nothing is ready its figure says. */
export function sayOutcome(line: PassLine, seen: Seen): Said | null {
  const words = wordsOf(seen);
  const { dish, runsOut, empty } = line;
  if (dish.soldOutAt !== null) return minded(words.soldOutSince(clock(dish.soldOutAt, seen)));
  if (mustSetOut(line, seen)) return minded(textIn(firstHeld(line).setOut, seen.say));
  // Before it opens what is held waits for that.
  if (!runsOut && isToSetOut(line)) return soft(textIn(firstHeld(line).setOut, seen.say));
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
  const presses = runsOut !== null || dish.soldOutAt !== null || mustSetOut(line, seen);
  const gap = presses ? sayGap(line, seen) : null;
  // What may not go out is said before what that makes of the service.
  const barred = pans.find(({ pan }) => pan.barred);
  const first = pans.find(({ pan }) => !pan.barred);
  const others = pans.filter((each) => each !== barred && each !== first);
  const held = first ? sayFirst(line, first, seen) : null;
  // Where nothing is there, how many will be is wanted beside when.
  const isTold = gap !== null && empty === null;
  const lands = !isTold && (next || empty === 'after') ? sayNext(line, seen) : null;
  // Of what runs out, when there is more is wanted sooner than till when the last may be held; of
  // what is all still held, that it is there.
  const isNextFirst = runsOut !== null && line.ready > 0 && held?.how !== 'mind';
  return [
    barred && sayPan(barred, seen),
    presses && (gap ?? sayOutcome(line, seen)),
    ...(isNextFirst ? [lands, held] : [held, lands]),
    ...others.slice(0, 1).map((left) => sayPan(left, seen)),
    dish.sold > 0 && saySold(line, seen),
  ].filter((each) => !!each);
}

/** Of several that stand ready the one that goes first is not all there is. */
function sayFirst({ ready }: PassLine, first: LeftInPan, seen: Seen): Said {
  const said = sayPan(first, seen);
  const { pan, left } = first;
  if (said.how !== 'soft' || left >= ready || pan.heldUntil === null) return said;
  return soft(wordsOf(seen).goesFirst(left, clock(pan.heldUntil, seen)));
}

/** That it runs out, and when there is some again, in the room of one of them. */
function sayGap(line: PassLine, seen: Seen): Said | null {
  const { dish, next, runsOut, pans, ready, held } = line;
  if (!next || !runsOut || dish.soldOutAt !== null || mustSetOut(line, seen)) return null;
  // What is barred says more of it than that nothing is there, which its figure says.
  if (ready + held === 0 && pans.length > 0) return sayNext(line, seen);
  if (next.readyAt <= runsOut.at) return null;
  const { outTill, shortTill } = wordsOf(seen);
  const till = ready + held > 0 ? outTill : shortTill;
  return minded(till(clock(runsOut.at, seen), clock(next.readyAt, seen)));
}

/** What goes first of what is held. */
const firstHeld = ({ pans }: PassLine): PassPan =>
  must(
    pans.find(({ pan }) => pan.stage === 'held' && !pan.barred),
    'a pan that is held',
  ).pan;

const isToSetOut = ({ ready, held, dish }: PassLine): boolean =>
  ready === 0 && held > 0 && dish.soldOutAt === null;

export const mustSetOut = (line: PassLine, { open }: Pick<Seen, 'open'>): boolean =>
  open && isToSetOut(line);

export const isOver = ({ pans }: PassLine, { now }: Pick<Seen, 'now'>): boolean =>
  pans.some(
    ({ pan: { heldUntil, barred } }) => barred !== null || (heldUntil !== null && heldUntil <= now),
  );
