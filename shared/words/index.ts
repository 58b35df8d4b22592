export { las } from './at-clock.ts';

import './both.ts';

export { sayAlert, sayRates } from './alert-words.ts';
export { sayAllergen } from './allergens.ts';
export {
  clockHour,
  clockTime,
  countPieces,
  durationWords,
  temperature,
  weight,
  wholeMinutes,
} from './amounts.ts';
export type { CheckWords } from './check-band-phrases.ts';
export {
  checkWords,
  sayAction,
  sayAsked,
  sayCheck,
  sayCheckKind,
  sayCheckRow,
  sayCheckTime,
  sayMore,
  sayToDo,
} from './check-band-words.ts';
export { checkDeskWords, sayLast } from './check-desk-words.ts';
export { sayFelt } from './check-words.ts';
export { clockOfDay } from './clock-of-day.ts';
export { clockRange, nearClock, nearRange, sinceClock } from './clock-range.ts';
export {
  closingWords,
  sayAllTheSame,
  sayClosed,
  sayPanEnd,
  sayStillOpen,
  sayToSettle,
} from './closing-words.ts';
export { sayCookOffer } from './cook-offers.ts';
export { deliveryWords, sayAmount, sayCame, sayOut } from './delivery-words.ts';
export { type DeskSectionName, type DeskWords, deskWords } from './desk-words.ts';
export { fireWords } from './fire-words.ts';
export { oddSayer } from './happening-refusals.ts';
export { sayHeldBy } from './held-by-words.ts';
export type { DeviceKind } from './install-phrases.ts';
export { installWords } from './install-words.ts';
export type { Interface } from './interface.ts';
export { learnLanguage } from './learn-language.ts';
export { sayLimitsHeld } from './limits-held.ts';
export { sayLimits } from './limits-words.ts';
export { logWords } from './log-words.ts';
export {
  mendWords,
  sayMendChange,
  sayMendLater,
  sayMendRung,
  sayMendServices,
  sayOverlong,
} from './mend-words.ts';
export { oddWords, sayOdd, sayOddRefused } from './odd-words.ts';
export { sayMargin, sayOffer } from './offers.ts';
export { type PassWords, passWords } from './pass-words.ts';
export { pitWords } from './pit-words.ts';
export {
  sayKept,
  sayNearestPlan,
  sayNearestTimes,
  sayPlanFits,
  sayPlanOffer,
} from './plan-desk.ts';
export { type PlanEditorWords, planEditorWords, sayWays } from './plan-editor-words.ts';
export { sayBecause, sayInHand, saySlot, saySlots } from './reasons.ts';
export { recordDeskWords } from './record-desk-words.ts';
export { sayRefusal } from './refusals.ts';
export { saySafety } from './safety-words.ts';
export { LANGUAGES, type Language, type Say, textIn } from './say.ts';
export { sayBettering, sayBound, sayGap } from './say-bettering.ts';
export { sayConflicting, sayConflictList } from './say-conflicting.ts';
export { sayCookDoubts, sayCookFault, sayForecast } from './say-cook.ts';
export { sayDay } from './say-day.ts';
export { sayLogged } from './say-logged.ts';
export { sayNews, sayNewsInShort } from './say-news.ts';
export { sayNextWhy } from './say-next.ts';
export { sayNothingToDo } from './say-nothing.ts';
export { sayPaces } from './say-paces.ts';
export { type ConflictNames, sayConflict, sayPlanRefusal } from './say-plan.ts';
export { sayReadings } from './say-readings.ts';
export { sayStanding } from './say-standing.ts';
export { sayTwice } from './say-twice.ts';
export { clockAhead, HALF_DAY_MS, sayDayAhead, sayWhen } from './say-when.ts';
export { sayBar, sayWhy } from './say-why.ts';
export { scaleWeight } from './scale-weight.ts';
export { handsTime, type StandardWords, standardWords } from './standard-words.ts';
export { type StartGroup, startWords } from './start-words.ts';
export {
  amountBehind,
  amountOf,
  amountsOf,
  isInTwoRows,
  isOfMix,
  unbroken,
} from './task-amounts.ts';
export { mindedOf, pressingOf } from './task-minded.ts';
export { shownClock, typedClock } from './typed-clock.ts';
export { sayTypedFault, type TypedFault, type Wanted } from './typed-fault.ts';
export { ui } from './ui.ts';
export { type WhoWords, whoWords } from './who-words.ts';
