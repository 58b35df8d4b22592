import type { Seconds, Span } from '../kernel/index.ts';
import { minutes, must, seconds } from '../kernel/index.ts';
import type { Mode, Placement, Problem, ResourceId, Schedule, Use } from '../schedule/index.ts';
import type { RoundTime } from './round-times.ts';

/** A round right before other work would pass its lateness on; so much is left where it can be. */
const BEFORE_OTHER_WORK_S = minutes(5);

export type RoundPlace = Omit<Placement, 'activity'>;

/**
 * Who is free when: finds rounds a place between the work that is already planned, and never moves
 * any of it.
 */
export class FreeTime {
  readonly #open: ReadonlyMap<ResourceId, readonly Span<Seconds>[]>;
  readonly #busy = new Map<ResourceId, Span<Seconds>[]>();

  constructor({ resources, horizonS }: Problem, { placements }: Schedule) {
    const always = [{ start: seconds(0), end: horizonS }];
    this.#open = new Map(
      resources.map((resource) => [
        resource.id,
        resource.kind === 'capacity' ? (resource.open ?? always) : always,
      ]),
    );
    for (const placement of placements) this.#take(placement);
  }

  /** Takes the place nearest to the wished time, or null where nobody is free in its window. */
  place(modes: readonly Mode[], time: RoundTime): RoundPlace | null {
    const found =
      this.#nearest(modes, time, BEFORE_OTHER_WORK_S) ?? this.#nearest(modes, time, seconds(0));
    if (found) this.#take(found);
    return found;
  }

  #nearest(modes: readonly Mode[], time: RoundTime, spareS: Seconds): RoundPlace | null {
    const away = ({ startS }: RoundPlace) => Math.abs(startS - time.atS);
    let best: RoundPlace | null = null;
    for (const mode of modes) {
      for (const team of teamsOf(mode)) {
        const place = this.#placeFor(mode, team, time, spareS);
        if (place && (best === null || away(place) < away(best))) best = place;
        // Nobody is free nearer to the wished time than at that time.
        if (best?.startS === time.atS) return best;
      }
    }
    return best;
  }

  #placeFor(
    { id, length }: Mode,
    team: readonly ResourceId[],
    { atS, fromS, toS }: RoundTime,
    spareS: Seconds,
  ): RoundPlace | null {
    const lengthS = length.kind === 'work' ? length.typicalS : length.minS;
    const open = team.map((resource) => must(this.#open.get(resource), resource));
    // Much is busy, and little of it in the window: only that is held against each start.
    const busy = team.flatMap((resource) => {
      const its = this.#busy.get(resource) ?? [];
      return its.filter(({ start, end }) => fromS < end && start < toS + lengthS + spareS);
    });
    const isFree = (startS: Seconds) => {
      const endS = startS + lengthS;
      return (
        open.every((spans) => spans.some(({ start, end }) => start <= startS && endS <= end)) &&
        busy.every(({ start, end }) => end <= startS || endS + spareS <= start)
      );
    };
    // The nearest is asked first: mostly it is free, and none of the others need be looked at.
    const startS = [atS, fromS, toS]
      .concat(busy.flatMap(({ start, end }) => [end, seconds(start - lengthS - spareS)]))
      .concat(open.flat().flatMap(({ start, end }) => [start, seconds(end - lengthS)]))
      .filter((each) => fromS <= each && each <= toS)
      .sort((a, b) => Math.abs(a - atS) - Math.abs(b - atS) || a - b)
      .find(isFree);
    if (startS === undefined) return null;
    const uses = team.map((resource, need): Use => ({ need, resource }));
    return { mode: id, startS, endS: seconds(startS + lengthS), uses };
  }

  #take({ startS, endS, uses }: RoundPlace): void {
    if (startS === endS) return;
    for (const { resource } of uses) {
      const busy = this.#busy.get(resource) ?? [];
      busy.push({ start: startS, end: endS });
      this.#busy.set(resource, busy);
    }
  }
}

/** Everybody who could do it alone, each with what else it takes. */
function teamsOf({ needs }: Mode): ResourceId[][] {
  return needs.reduce<ResourceId[][]>(
    (teams, { oneOf }) => teams.flatMap((team) => oneOf.map((resource) => [...team, resource])),
    [[]],
  );
}
