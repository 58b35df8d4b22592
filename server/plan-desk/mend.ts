import {
  type DayState,
  type Mend,
  type MendFact,
  mendOf,
  openLive,
  stillMends,
} from '../../shared/day/index.ts';
import type { Instant } from '../../shared/kernel/index.ts';

/** A day with a plan, as it stands at `now`. */
export type MendAsk = { readonly state: DayState; readonly now: Instant };

export type StillAsk = MendAsk & { readonly fact: MendFact };

/** What would mend it. */
export const mendNow = ({ state, now }: MendAsk): Mend => mendOf(openLive(state, now));

/** Whether that is still better than to leave it. */
export const stillMendsNow = ({ state, now, fact }: StillAsk): boolean =>
  stillMends(openLive(state, now), fact);
