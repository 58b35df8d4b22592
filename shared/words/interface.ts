import type { HandChange, NoteFault } from '../view/index.ts';
import type { CureWords } from './cure-words.ts';

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
  /** Opens where the work can hurt. */
  readonly careful: string;
  whichTub(batch: string): string;
  /** What a weight can be. */
  upTo(most: string): string;
  readonly cure: CureWords;

  readonly nowBand: string;
  readonly nextBand: string;
  readonly thenBand: string;
  later(count: number): string;
  readonly nothingLeft: string;
  /** Where the next work here is a good while off. */
  nothingUntil(time: string): string;
  /** The same where something is still to be looked at: now, or at a time. */
  onlyLookUntil(time: string): string;
  readonly onlyLook: string;
  lookNext(time: string): string;
  taskName(title: string, who: string | null): string;

  dayClosed(time: string, by: string | null): string;
  aloneSince(time: string): string;
  /** Over what last stood on a wall, until it shows what stands now. */
  stoodAt(time: string): string;
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

  readonly leaveIt: string;
  readonly erase: string;
  readonly belowZero: string;
  between(low: string, high: string): string;

  readonly otherScreen: string;
  readonly wipeGlass: string;
  readonly handChange: Record<HandChange, string>;
  readonly isWiped: string;
  readonly thisScreen: string;
};
