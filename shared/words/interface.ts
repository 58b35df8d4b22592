import type { HandChange, NoteFault } from '../view/index.ts';

/**
 * The fixed words of the screens; what is counted or named comes in already in the reader's
 * language.
 */
export type Interface = {
  readonly start: string;
  readonly finish: string;
  readonly undo: string;
  readonly late: string;
  readonly help: string;
  readonly helpAsked: string;
  readonly helped: string;
  readonly giveTo: string;
  readonly takeBack: string;
  readonly note: string;
  /** Why a note cannot be kept. */
  noteWrong(fault: NoteFault, most: number, over: number): string;
  readonly keep: string;
  readonly close: string;
  readonly seen: string;
  /** Of all the refusals that nobody has read yet. */
  allSeen(count: number): string;
  laterBy(minutes: number): string;
  readonly doneAbout: string;

  readonly doneAt: string;
  readonly ready: string;
  readonly waits: string;
  readonly anyone: string;
  countOne(piece: string, done: number, pieces: number): string;
  countLess(piece: string): string;
  /** What is counted at once where it is not a piece. */
  trayOf(pieces: number): string;
  trays(count: number): string;
  /** Of a mix: how many pieces it is for. */
  forThese(count: string): string;
  readonly weigh: string;
  whichTub(batch: string): string;
  /** What a weight can be. */
  upTo(most: string): string;

  readonly nowBand: string;
  readonly nextBand: string;
  readonly thenBand: string;
  later(count: number): string;
  readonly nothingLeft: string;
  /** The same where something is still to be looked at: now, or at a time. */
  /** Where the next work here is a good while off. */
  /** In the place of a range's first time, once that is over. */
  readonly already: string;
  nothingUntil(time: string): string;
  onlyLookUntil(time: string): string;
  readonly onlyLook: string;
  lookNext(time: string): string;
  taskName(title: string, who: string | null): string;

  dayClosed(time: string, by: string | null): string;
  aloneSince(time: string): string;
  keptHere(taps: number): string;
  readonly notKept: string;
  readonly looking: string;
  readonly broken: string;
  tapAt(time: string): string;
  refusedTap(title: string, why: string): string;

  goesOut(name: string): string;
  comesIn(name: string): string;
  /** Of somebody who is out, or a smoker that is down. */
  backAt(name: string, time: string | null): string;
  whenBack(name: string): string;
  backIn(duration: string, time: string): string;
  restOfDay(time: string): string;
  readonly nobodyKnows: string;

  readonly smokers: string;
  setTo(temp: string): string;
  readonly heatBelow: string;
  readonly heatAbove: string;
  readonly heatSide: string;
  /** Which side of a fat cap the heat comes to, beside an arrow that shows from where. */
  readonly fatDown: string;
  readonly fatUp: string;
  readonly free: string;
  freeTill(time: string): string;
  comesAt(pieces: string, time: string): string;
  thenComes(pieces: string, time: string): string;
  readonly off: string;
  core(temp: string): string;
  readonly coreReading: string;
  readonly notCalibrated: string;
  /** By how many finished cooks of this kitchen forecasts go, and how many are enough. */
  cooksOnRecord(cooks: number, enough: number): string;
  fireHotter(by: string): string;
  readonly wrapNow: string;
  inEarlier(by: string): string;
  readonly airReading: string;
  readonly whereTo: string;
  moveTo(place: string): string;
  readonly asking: string;
  readonly takeIt: string;
  readonly leaveIt: string;
  readonly cannotAsk: string;
  readonly erase: string;
  readonly belowZero: string;
  between(low: string, high: string): string;

  readonly otherScreen: string;
  readonly wipeGlass: string;
  readonly handChange: Record<HandChange, string>;
  readonly isWiped: string;
  readonly thisScreen: string;
};
