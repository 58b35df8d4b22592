import type { CheckKind } from '../view/index.ts';

/** The fixed words where something is looked at, on a wall and at the desk. */
export type CheckWords = {
  readonly look: string;
  /** What somebody is to do there, in a verb: for whoever sees a box for the first time. */
  readonly toDo: Readonly<Record<CheckKind, string>>;
  more(count: number): string;
  /** Said of boxes behind one more. */
  readonly toThrowOut: string;
  /** Of food whose time is over, with how many portions are left where that is known. */
  throwOut(portions: number | null): string;
  oldSince(time: string): string;
  by(time: string): string;
  since(time: string): string;
  atLeast(asked: string): string;
  atMost(asked: string): string;
  /** Of a thermometer. */
  offBy(asked: string): string;
  foundBut(found: string, asked: string): string;
  again(time: string): string;
  foundBy(time: string, person: string | null): string;
  readonly whatWasDone: string;
  readonly whoLooked: string;
  withProbe(name: string): string;
  /** Beside a number that was likely read in the other unit. */
  inOther(typed: string, other: string): string;
  itIs(temp: string): string;
  readonly typeIt: string;
  /** Of the temperature of a cook that is done when it feels so. */
  guide(temp: string): string;
  readonly howFelt: string;
  readonly feelIt: string;
};
