import type { PlanRefusal } from '../plan/index.ts';

type LimitsStepWhy = Extract<PlanRefusal, { rule: 'limits-changed' }>['why'];

/** What a language needs to say why a cook plan cannot be. Every argument is already in words. */
export type PlanPhrases = {
  quoted(title: string): string;
  unknownWord(path: string, found: string, allowed: string): string;
  closesBeforeOpening(service: string, opens: string, closes: string): string;
  salesAfterClosing(of: string, counted: number, open: number): string;
  portionOverPiece(of: string, portion: string, piece: string): string;
  noSmoker(of: string, set: string, each: string, nearest: string | null): string;
  unfit: {
    notWished(smoker: string): string;
    heat(smoker: string, coolest: string, hottest: string): string;
    size(smoker: string, needs: string, most: string): string;
    weight(smoker: string, needs: string, most: string): string;
  };
  /** The nearest plan that a smoker could take. */
  nearest: {
    heat(smoker: string, set: string): string;
    size(smoker: string, most: string): string;
    weight(smoker: string, most: string): string;
  };
  noSkill(of: string, step: string, skill: string, needs: number, has: number): string;
  handLacksSkill(of: string, step: string, hand: string, skill: string): string;
  nobodyThere(eve: string, day: string): string;
  /** `longest` is null where nobody who can do it is there at all. */
  noShift(of: string, step: string, needs: string, longest: string | null): string;
  noStation(of: string, step: string, bench: string): string;
  noRoomToKeep: Record<
    'cooler' | 'pans' | 'whole',
    (of: string, step: string, needs: number, has: number) => string
  >;
  limitTooShort(of: string, from: string, to: string, needs: string, allowed: string): string;
  serviceTooEarly(of: string, opens: string, needs: string, has: string, can: string): string;
  batchTooLarge(of: string, number: number, pieces: number, most: number, portions: number): string;
  batchBegun(batch: string, pieces: number): string;
  notDelivered(cut: string, needs: number, has: number): string;
  stepBegun(batch: string, step: string): string;
  trimShort(of: string, cut: string, needs: string, has: string, portions: number): string;
  /** By which rule of `LimitsStep` they may not follow. */
  limitsChanged: Record<LimitsStepWhy, (from: string, to: string) => string>;
  limitBroken(about: string, limit: string, asked: string | null, found: string | null): string;
  conflict: {
    lagsContradict(tasks: string, excess: string): string;
    noResource(task: string, amount: number, most: number): string;
    noRoom(
      task: string,
      places: string,
      from: string,
      to: string,
      short: string,
      by: string,
    ): string;
    goalTooEarly(chain: string, short: string): string;
    /** Of a chain of so many links only the longest are told. */
    longGoalTooEarly(links: number, longest: string, short: string): string;
    malformed(where: string, what: string): string;
  };
};
