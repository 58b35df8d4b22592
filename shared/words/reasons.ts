import type { Instant } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { Because, ServiceOutlook, SlotName, TaskName } from '../view/index.ts';
import { clockTime, durationWords, wholeMinutes } from './amounts.ts';
import { checkPhrasesOf } from './check-words.ts';
import { phrasesOf } from './language.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { clockAhead } from './say-when.ts';

/** @example saySlots([one, two], say) //=> 'Smoker B, rack 2, 3 · Long pit, rack 1' */
export function saySlots(slots: readonly SlotName[], say: Say): string {
  const smokers = [...new Set(slots.map(({ smoker }) => textIn(smoker, say)))];
  const racksOf = (name: string) =>
    slots.filter(({ smoker }) => textIn(smoker, say) === name).map(({ rack }) => rack);
  return smokers.map((name) => phrasesOf(say).slot(name, racksOf(name).join(', '))).join(' · ');
}

/** @example saySlot(slot, say) //=> 'Smoker B, rack 2' */
export function saySlot(slot: SlotName, say: Say): string {
  return phrasesOf(say).slot(textIn(slot.smoker, say), slot.rack);
}

/**
 * How a service stands. `now`: where it is read on whatever day, and not on the day's own sheet.
 * @example sayInHand(outlook, say) //=> 'dinner 17:00: 35 min to spare'
 */
export function sayInHand(outlook: ServiceOutlook, say: Say, now: Instant | null = null): string {
  const { service } = phrasesOf(say);
  const name = textIn(outlook.name, say);
  const { opensAt } = outlook;
  const opens = now === null ? clockTime(opensAt, say) : clockAhead(opensAt, now, say);
  const at = now !== null && opensAt <= now ? service.on : opens;
  const minutes = wholeMinutes(outlook.inHandS);
  if (minutes === 0) return service.onTime(name, at);
  const time = durationWords(outlook.inHandS);
  return minutes > 0 ? service.inHand(name, at, time) : service.short(name, at, time);
}

/** A task within a sentence: in a word or two where it has them, else by its whole line. */
function inShort({ title, short }: TaskName, say: Say): string {
  return short ? textIn(short, say) : phrasesOf(say).titled(textIn(title, say));
}

/** Why a task is when it is, in one short phrase for the right of its line. */
export function sayBecause(because: Because, say: Say): string {
  const words = phrasesOf(say).because;
  switch (because.kind) {
    case 'after': {
      const wait = because.waitS >= 60 ? durationWords(because.waitS) : null;
      return words.after(inShort(because.task, say), wait);
    }
    case 'hand':
      return words.hand(because.person.name);
    case 'place':
      return words.place(saySlot(because.slot, say), clockTime(because.until, say));
    case 'fire':
      return words.fire(textIn(because.smoker.name, say), clockTime(because.until, say));
    case 'room':
      return words.room(inShort(because.busyWith, say), clockTime(because.until, say));
    case 'shift':
      return words.shift(because.person.name, clockTime(because.from, say));
    case 'plan':
      return words.plan(clockTime(because.at, say));
    case 'now':
      return words.now;
    case 'down':
      return words.down(
        textIn(because.smoker.name, say),
        because.backAt && clockTime(because.backAt, say),
      );
    case 'barred':
      return words.barred(checkPhrasesOf(say).kind[because.check]);
    case 'out':
      return words.out(because.person.name, because.backAt && clockTime(because.backAt, say));
    default:
      return unreachable(because);
  }
}
