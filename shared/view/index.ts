export type {
  Because,
  CheckKind,
  CheckOn,
  CheckRefusal,
  Command,
  CookOffer,
  CorrectiveAction,
  Intent,
  MendChange,
  MendOffer,
  MovedLoad,
  MoveOffer,
  Odd,
  Overlong,
  PlanOffer,
  Refusal,
  WouldBe,
} from '../day/index.ts';
export { isLate, laterS, MOST_KG, MOST_PIECES, oddDelivery, oddLot } from '../day/index.ts';
export type { Text } from '../kernel/index.ts';
export type { Breach, PersonName, SlotName, SmokerName, TaskName } from '../plan/index.ts';
export {
  type AlertBook,
  type AlertNotice,
  type AlertRate,
  emptyBook,
  heed,
  noticesOf,
  type Ring,
  ratesOf,
} from './alert-book.ts';
export { type Alert, alertsIn } from './alerts.ts';
export { moveTimes } from './alone.ts';
export {
  barUnder,
  type ChainLink,
  chainLinks,
  type IdleRow,
  type LaidBar,
  type LaidRow,
  lanesOf,
  layRows,
  rowsInView,
  stepFrom,
  whyOf,
} from './chart-lanes.ts';
export {
  type ChartWindow,
  holdsWindow,
  panned,
  placeIn,
  ruleOf,
  ruleStepMin,
  showing,
  widened,
  windowAt,
  zoomed,
} from './chart-window.ts';
export {
  type Doubt,
  doubtOf,
  mayBeBelowZero,
  PROBE_HIGH_C,
  PROBE_LOW_C,
  type TempUnit,
} from './check-doubt.ts';
export type { LastLooked } from './check-last.ts';
export { type CheckView, checksDue, howOpen, isTooOld, layChecked } from './check-view.ts';
export { type CookDrawing, type CookLines, cookLines } from './cook-drawing.ts';
export type { ChartBar, ChartChain, ChartRange, ChartRow, DayChart } from './day-chart.ts';
export type { DayEnd, DishEnd, PanEnd } from './day-end.ts';
export type { LogLine } from './day-log.ts';
export type { DeskView, LimitsHeld } from './desk-view.ts';
export { drawnView } from './drawn.ts';
export { type Face, stationAt, stationsIn, stationsOf } from './face.ts';
export { type HandChange, handChange } from './hand-change.ts';
export type { HeldBy } from './held-by.ts';
export { LagsAmong } from './lags-among.ts';
export { type LaidOut, layOut } from './laid-out.ts';
export { leftByService } from './left-by-service.ts';
export { type LogKind, logKind } from './log-kind.ts';
export type { Logged } from './logged.ts';
export type { NewsLine } from './news-line.ts';
export { NOTE_MAX, type NoteFault, noteFault } from './note.ts';
export { type Drawn, type Mark, overlay, type PendingTap } from './overlay.ts';
export { loadMark } from './overlay-smokers.ts';
export { isOvertaken } from './overtaken.ts';
export type { PassDish, PassPan, PassService } from './pass-dish.ts';
export { type LeftInPan, type PassLine, passLine } from './pass-page.ts';
export type { PassView } from './pass-view.ts';
export { type PitRule, pitRule, shareOf } from './pit-rule.ts';
export { type Came, deliveryTyped, isOut, type PullRow } from './pull-rows.ts';
export { type RuledMinutes, ruledMinutes } from './ruled-minutes.ts';
export type { RunsOut } from './runs-out.ts';
export type { ServiceStanding, SpreadView } from './service-standing.ts';
export {
  type CutStandard,
  type Drawing,
  SHEET,
  type StandardMove,
  type StandardPart,
  type StandardsShown,
  standardsOf,
} from './standard/index.ts';
export {
  type NowTask,
  pressesNow,
  type Room,
  type StationPage,
  stationPage,
} from './station-page.ts';
export { type Tally, tallyOf } from './tally.ts';
export { taskView } from './task-view.ts';
export type * from './view.ts';
export { viewOf } from './view-of.ts';
export { isWork, type View, type WorkView } from './views.ts';
export { wouldBeBars } from './would-be-bars.ts';
