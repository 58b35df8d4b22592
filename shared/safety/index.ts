export { breachOf, type RowBroken, rowBroken } from './breach.ts';
export { type Cooling, type CoolingStage, coolingsOf, decidingCooling } from './cooling.ts';
export { type ExpectedStage, projectCooling } from './cooling-projection.ts';
export {
  CURE_STRENGTH,
  cureGramsPerKg,
  judgeNitrite,
  pumpedPpm,
  rubbedPpm,
  saltPercent,
} from './curing.ts';
export type { Interruption } from './interruption.ts';
export {
  judgeComeUp,
  judgeEndTemperature,
  judgeFirstHeat,
  judgeProbePlace,
  judgeReheat,
} from './judge-cook.ts';
export {
  judgeCleaning,
  judgeColdHold,
  judgeDateMark,
  judgeHotHold,
  judgeOutOfTemperature,
  judgeReceiving,
  judgeTimeControl,
  lastDay,
  type TimeControl,
} from './judge-hold.ts';
export { judgeAbove, judgeTurning, type Lying } from './judge-place.ts';
export { judgeThermometer, type ThermometerCheck } from './judge-thermometer.ts';
export type { Broken, Judgement } from './judgement.ts';
export { kindNamed } from './kind-names.ts';
export { type Lethality, lethalityOf } from './lethality.ts';
export { type LethalityTable, lookupOf, neededS } from './lethality-table.ts';
export { type LimitsChange, limitsFileSchema } from './limits-schema.ts';
export type { LogFault } from './log-doubts.ts';
export { isOtherUnit } from './log-doubts.ts';
export { creditsRoastTable, type Oven } from './oven.ts';
export type { Amount, PrintedTemp, PrintedTime, TempUnit } from './printed.ts';
export { amountOf, celsiusOf, secondsOf, tempIn } from './printed.ts';
export { limitOf, type Profile, rowsOf } from './profile.ts';
export { type HeldTo, type LimitsStep, profileAfter, stepBetween } from './profile-history.ts';
export { celsiusCode, emptyCode, foodCode, profiles } from './profiles.ts';
export { readLimits } from './read-limits.ts';
export { type LogOptions, type LogRead, readLog } from './read-log.ts';
export { coldestOf, plausibleCoreC, type Reading, type Series, warmestOf } from './readings.ts';
export type {
  CorrectiveAction,
  CureMethod,
  Kind,
  Point,
  Process,
  ReheatWay,
  Row,
  RowOf,
  Rule,
  Sureness,
} from './row-schema.ts';
export { kinds } from './row-schema.ts';
export { safetyOf, safetyOfProbes } from './safety-of.ts';
export type { CoolingReport, SafetyReport, SafetyWarning } from './safety-report.ts';
export { type TableId, tables } from './tables.ts';
export { variancesOf } from './variance.ts';
export type { Circumstances } from './watch.ts';
