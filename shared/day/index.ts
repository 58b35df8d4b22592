export { adoptedFrom, decideForecast, isNewsOfCook } from './adopt-forecast.ts';
export type * from './adopted-forecast.ts';
export type * from './adopted-plan.ts';
export { allergensOf, allergensOfDish } from './allergens.ts';
export {
  currentHand,
  currentHands,
  handsFor,
  heatNeededC,
  loadsOf,
  modeOf,
  placementOf,
} from './arrangement.ts';
export { barsOf, breachOfCheck, isDiscarded, whyBarred, whyOpen } from './barred.ts';
export { type Because, because } from './because.ts';
export { MOST_KG, MOST_PIECES } from './came-amounts.ts';
export { type Carry, carryOf, dayFrom } from './carry.ts';
export * from './check-event.ts';
export { hasReading } from './check-limits.ts';
export type { CheckRefusal } from './check-refusal.ts';
export type * from './command.ts';
export { type CookAsk, cookAskOf, cookAsks } from './cook-ask.ts';
export { type CookOffer, cookOffer, earlierOffer } from './cook-offer.ts';
export { type Calibration, calibrationOf } from './cook-record.ts';
export { type CookingStage, cookStagesOf, stayIn } from './cooking.ts';
export { cureOf } from './cure.ts';
export type { CureIntent } from './cure-fact.ts';
export { decide } from './decide.ts';
export { closingNow } from './decide-happening.ts';
export {
  decideLanguage,
  decideWho,
  type WhoAction,
  type WhoActor,
  whyNoDesk,
} from './decide-who.ts';
export type { Decision } from './decision.ts';
export { cameOf, type DeliveryEffect, deliveryEffect } from './delivery.ts';
export type { Door } from './door.ts';
export { doorsOf, lastUnseen, openedOn } from './doors.ts';
export { begunAt, type Draw, drawsOf, lotsLeft } from './draws.ts';
export * from './event.ts';
export { type FeelAsked, feelAsked } from './feel-asked.ts';
export { fold } from './fold.ts';
export { forecastOf } from './foreseen.ts';
export { everIn, slotNamedEver } from './former.ts';
export { handTimesAfter, pacesOf } from './hands-record.ts';
export type { Delivery, Spell } from './happened.ts';
export { emptiedAt, isDown, isUnsettled, soldAt, soldOutAt, spellOf } from './happened-to.ts';
export type * from './happening.ts';
export type { HappeningRefusal } from './happening-refusal.ts';
export { type Hold, holdsOf } from './held.ts';
export { heldBy, heldTo } from './held-to.ts';
export { keptNow } from './holds.ts';
export { idleRound } from './idle-round.ts';
export { type IfMoved, ifMoved } from './if-moved.ts';
export { keptBy } from './kept-food.ts';
export { type LabelFacts, labelFacts } from './label-facts.ts';
export { isLate, laterS } from './later.ts';
export { isStillCooling } from './leftovers.ts';
export { type LimitAt, limitAt } from './limit-at.ts';
export type { LimitsFact } from './limits-fact.ts';
export { type Live, openLive } from './live.ts';
export type { Lot, LotRefusal, Received } from './lot.ts';
export { type Mend, mendOf, stillMends, whyNotMended } from './mend.ts';
export type { MendFact } from './mend-fact.ts';
export type { MendChange, MendOffer } from './mend-offer.ts';
export { type Odd, oddDelivery, oddLot } from './odd-delivery.ts';
export type * from './offer.ts';
export type { OpenCheck } from './open-check.ts';
export { openChecks } from './open-checks.ts';
export type { Outlook } from './outlook.ts';
export { type Overlong, overlongIn } from './overlong.ts';
export { type Passage, passagesOf } from './passage.ts';
export { batchNamed, groupBy, indexOf, type PlanIndex, slotName, stepsOf } from './plan-index.ts';
export { type PlanOffer, planOffer } from './plan-offer.ts';
export { coresOf } from './probe.ts';
export { lookAtReading, type ReadingFound } from './readings.ts';
export { mayStart } from './ready.ts';
export type * from './refusal.ts';
export { sentBackIn } from './sent-back.ts';
export { shutIn } from './shut.ts';
export { type ServiceSpread, spreading } from './spread.ts';
export { standingOf, startedIn } from './standing.ts';
export { type DayState, emptyDay, factsOf, type TaskFacts } from './state.ts';
export type { Told } from './story.ts';
export { mayHaveFed, soldBy, thrownAt, thrownShare } from './thrown.ts';
export { type TubStanding, tubsAfter } from './tub.ts';
export { type TubIntent, tubKey } from './tub-fact.ts';
export { ASKED_AHEAD_S } from './turned.ts';
export { watchedIn } from './watched.ts';
export { askIf, type WhatIf } from './what-if.ts';
export { whereKept } from './where-kept.ts';
export { slotsOf } from './whereabouts.ts';
export {
  type CrewLanguage,
  isUnclaimed,
  isWhoFact,
  languageReadBy,
  livingScreens,
  type Place,
  type Role,
  type ScreenRecord,
  type WhoFact,
  type WhoState,
} from './who.ts';
export type { WhoRefusal } from './who-refusal.ts';
export { slotsWorkedAt } from './worked-at.ts';
export { ownersOf, type WouldBe } from './would-be.ts';
