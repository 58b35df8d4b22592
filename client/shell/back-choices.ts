import type { Instant } from '../../shared/kernel/index.ts';
import { after, minutes } from '../../shared/kernel/index.ts';
import { clockTime, durationWords, type Say, ui } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';

/** What people say of a hand that goes, or of a fire that has to be mended. */
const SOON = [minutes(30), minutes(60), minutes(120)] as const;

type Asked = {
  readonly now: Instant;
  /** When the day is over. */
  readonly endsAt: Instant;
  readonly say: Say;
  readonly choose: (backAt: Instant | null) => void;
};

/** A box for each time at which it may be thought to be back. */
export function backChoices({ now, endsAt, say, choose }: Asked): Choice[] {
  const words = ui[say.language];
  const box = (label: string, at: Instant | null) => ({ label, choose: () => choose(at) });
  const soon = SOON.map((lastS) => {
    const at = after(now, lastS);
    return box(words.backIn(durationWords(lastS), clockTime(at, say)), at);
  });
  const atTheEnd = box(words.restOfDay(clockTime(endsAt, say)), endsAt);
  return [...soon, ...(endsAt > now ? [atTheEnd] : []), box(words.nobodyKnows, null)];
}
