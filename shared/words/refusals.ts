import { unreachable } from '../kernel/index.ts';
import type { Refusal } from '../view/index.ts';
import { clockTime, durationWords, temperature, weight } from './amounts.ts';
import { isCheckRefusal, sayCheckRefusal } from './check-refusals.ts';
import { isHappeningRefusal, sayHappeningRefusal } from './happening-refusals.ts';
import { phrasesOf } from './language.ts';
import { saySlot } from './reasons.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { isWhoRefusal, sayWhoRefusal } from './who-refusals.ts';

/** A refusal as one plain sentence: what, where, and what to do. */
export function sayRefusal(refusal: Refusal, say: Say): string {
  if (isWhoRefusal(refusal, say)) return sayWhoRefusal(refusal, say);
  if (isHappeningRefusal(refusal, say)) return sayHappeningRefusal(refusal, say);
  if (isCheckRefusal(refusal)) return sayCheckRefusal(refusal, say);
  const words = phrasesOf(say).refusal;
  switch (refusal.rule) {
    case 'no-plan':
      return words.noPlan;
    case 'another-day':
      return words.anotherDay(refusal.taps);
    case 'unknown-task':
      return words.unknownTask;
    case 'already-started':
      return words.alreadyStarted(clockTime(refusal.at, say), whoWas(refusal));
    case 'already-done':
      return words.alreadyDone(clockTime(refusal.at, say), whoWas(refusal));
    case 'not-started':
      return words.notStarted;
    case 'not-by-hand':
      return words.notByHand(textIn(refusal.task.title, say));
    case 'waits-for':
      return words.waitsFor(textIn(refusal.before.title, say));
    case 'already-followed':
      return words.alreadyFollowed(textIn(refusal.by.title, say));
    case 'count-out-of-range':
      return words.countOutOfRange(refusal.done, refusal.pieces);
    case 'late-out-of-range':
      return words.lateOutOfRange(durationWords(refusal.byS), durationWords(refusal.mostS));
    case 'not-this-screens':
      return words.notThisScreens;
    case 'unknown-person':
      return words.unknownPerson;
    case 'lacks-skill':
      return words.lacksSkill(refusal.person.name, textIn(refusal.task.title, say));
    case 'impossible-temperature':
      return words.impossibleTemperature(temperature(refusal.tempC, say));
    default:
      return sayPlaceRefusal(refusal, say);
  }
}

type First = Extract<Refusal, { rule: 'already-done' | 'already-started' }>;

/** A person by name; where nobody said who they are, the screen that they stood at. */
const whoWas = ({ by, on }: First) => ({ person: by?.name ?? null, screen: on ?? null });

type PlaceRule =
  | 'unknown-place'
  | 'slot-too-small'
  | 'slot-taken'
  | 'fire-differs'
  | 'rack-unfit'
  | 'rack-too-weak'
  | 'drips'
  | 'off-already'
  | 'in-already'
  | 'not-so-early'
  | 'nothing-foreseen'
  | 'out-of-date'
  | 'nothing-moves'
  | 'read-only'
  | 'hub-fault'
  | 'bad-message';

function sayPlaceRefusal(refusal: Extract<Refusal, { rule: PlaceRule }>, say: Say): string {
  const words = phrasesOf(say).refusal;
  switch (refusal.rule) {
    case 'unknown-place':
      return words.unknownPlace;
    case 'slot-too-small':
      return words.slotTooSmall(
        saySlot(refusal.slot, say),
        `${refusal.needCm2} cm²`,
        `${refusal.freeCm2} cm²`,
      );
    case 'slot-taken':
      return words.slotTaken(
        saySlot(refusal.slot, say),
        textIn(refusal.by.title, say),
        clockTime(refusal.until, say),
      );
    case 'fire-differs':
      return words.fireDiffers(
        saySlot(refusal.slot, say),
        temperature(refusal.needC, say),
        temperature(refusal.isC, say),
      );
    case 'rack-unfit':
      return words.rackUnfit(saySlot(refusal.slot, say));
    case 'rack-too-weak':
      return words.rackTooWeak(
        saySlot(refusal.slot, say),
        weight(refusal.needKg, say),
        weight(refusal.freeKg, say),
      );
    case 'drips':
      return words.drips(
        saySlot(refusal.slot, say),
        textIn(refusal.other.title, say),
        `${textIn(refusal.row.what, say)} (${refusal.row.section}, ${refusal.row.source})`,
      );
    case 'off-already':
      return words.offAlready;
    case 'in-already':
      return words.inAlready(clockTime(refusal.at, say));
    case 'not-so-early': {
      const { mostS, before } = refusal;
      const most = mostS < 60 ? null : durationWords(mostS);
      return words.notSoEarly(most, before && `“${textIn(before.title, say)}”`);
    }
    case 'nothing-foreseen':
      return words.nothingForeseen;
    case 'out-of-date':
      return words.outOfDate;
    case 'nothing-moves':
      return words.nothingMoves;
    case 'read-only':
      return words.readOnly(refusal.atSeq);
    case 'hub-fault':
      return words.hubFault;
    case 'bad-message':
      return words.badMessage(refusal.where, refusal.what);
    default:
      return unreachable(refusal);
  }
}
