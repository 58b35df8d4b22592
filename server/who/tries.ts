import { createPace, type Pace } from '../socket/index.ts';

/** How often something may be tried, for each of those who try. */
export type Tries = {
  /** Counts one try more: null when it may be made, else the seconds until the next. */
  take(who: string): number | null;
};

/** So many are remembered at once; the oldest are forgotten first, none of them soon. */
const REMEMBERED = 1_000;

/** @param nowMs a clock that never runs backwards. */
export function createTries(
  limit: { readonly burst: number; readonly everyS: number },
  nowMs: () => number,
): Tries {
  const paces = new Map<string, Pace>();

  function paceOf(who: string): Pace {
    const pace = paces.get(who) ?? createPace({ perSecond: 1 / limit.everyS, burst: limit.burst });
    paces.delete(who);
    paces.set(who, pace);
    const [oldest] = paces.keys();
    if (paces.size > REMEMBERED && oldest !== undefined) paces.delete(oldest);
    return pace;
  }

  return {
    take(who) {
      const waitMs = paceOf(who).tryTake(nowMs());
      return waitMs === 0 ? null : waitMs / 1000;
    },
  };
}
