import type { Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { UpkeepRound } from './built.ts';
import type { RoundPlace } from './round-places.ts';
import { longestS, type RoundTime, typicalS } from './round-times.ts';

type Placed = { readonly turn: number; readonly startS: Seconds; readonly endS: Seconds };

/**
 * What is done before a thing is used is done in the order in which the catalogue lists it: a
 * grease tray is empty before the fire is lit.
 */
export class BeforeUse {
  readonly #placed = new Map<string, Placed[]>();

  /** The time of a round between those that come before it and those that follow. */
  inTurn(round: UpkeepRound, turn: number, time: RoundTime): RoundTime {
    const others = this.#placed.get(useOf(round, time)) ?? [];
    const earlier = others.filter((other) => other.turn < turn).map(({ endS }) => endS);
    const later = others.filter((other) => other.turn > turn).map(({ startS }) => startS);
    const fromS = Math.max(time.fromS, ...earlier);
    const toS = Math.min(time.toS, ...later.map((startS) => startS - longestS(round)));
    const atS = Math.max(fromS, Math.min(time.atS, toS));
    return { atS: seconds(atS), fromS: seconds(fromS), toS: seconds(toS) };
  }

  put(round: UpkeepRound, turn: number, time: RoundTime, { startS, endS }: RoundPlace): void {
    if (round.when !== 'before') return;
    const use = useOf(round, time);
    this.#placed.set(use, [...(this.#placed.get(use) ?? []), { turn, startS, endS }]);
  }
}

/** The use that a round is for; what is done while a thing is used is for none. */
function useOf(round: UpkeepRound, { atS }: RoundTime): string {
  if (round.when !== 'before') return '';
  return `${round.task.batch} at ${atS + typicalS(round)}`;
}
