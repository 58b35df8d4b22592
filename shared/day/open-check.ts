import type { Instant, Seconds, StationId } from '../kernel/index.ts';
import { after, minutes, must, seconds } from '../kernel/index.ts';
import type { Profile } from '../safety/index.ts';
import { type CheckOn, checkKey } from './check-event.ts';
import { type Asks, asksOf } from './check-limits.ts';
import type { Failure, Said } from './check-story.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import type { Watched } from './watched.ts';

/** Something that has to be looked at, or put right: what, where, and till when. */
export type OpenCheck = Asks & {
  readonly on: CheckOn;
  readonly key: string;
  /** On whose wall it stands. */
  readonly station: StationId;
  /** From when on looking counts, when it is asked for, and from when on it was missed. */
  readonly fromAt: Instant;
  readonly dueAt: Instant;
  readonly lateAt: Instant;
  /** What was found wrong, till somebody says what was done about it. */
  readonly failed: Failure | null;
  /** Something was done about it, and a reading has to show that it helped. */
  readonly isMending: boolean;
};

/** All that is looked up to say what is open. */
export type Looking = {
  readonly state: DayState;
  readonly index: PlanIndex;
  readonly profile: Profile;
  readonly said: Said;
};

/** What was put right is read again so soon, and in two hours at most (judged). */
const AGAIN_S = minutes(20);
const AGAIN_LATE_S = minutes(120);

type At = { readonly fromAt: Instant; readonly dueAt: Instant; readonly lateAt: Instant };
type Opened = At & {
  readonly on: CheckOn;
  readonly station: StationId;
  /** Of what the route limits. */
  readonly asked?: string;
  readonly failed?: Failure;
  readonly isMending?: boolean;
};

/** One open check; none where the limits have no figure for it. */
export function opened(
  { profile }: Pick<Looking, 'profile'>,
  { on, failed, isMending = false, ...rest }: Opened,
  watched: Pick<Watched, 'food'> | null = null,
): OpenCheck[] {
  const asks = asksOf(profile, on, watched?.food ?? null);
  if (!asks) return [];
  return [{ ...asks, on, key: checkKey(on), ...rest, failed: failed ?? null, isMending }];
}

/** From a moment on, wanted so much later, missed so much after that. */
export const span = (from: Instant, dueS: Seconds | number, lateS: Seconds | number): At => ({
  fromAt: from,
  dueAt: after(from, seconds(dueS)),
  lateAt: after(from, seconds(lateS)),
});

/** Of what failed: it is open since then. */
export const sinceFailed = ({ at }: Failure): At => ({ fromAt: at, dueAt: at, lateAt: at });

/** Of what is being put right. */
export const again = (since: Instant): At => span(since, AGAIN_S, AGAIN_LATE_S);

/** Where raw things come in; the first station of a kitchen that has none for them. */
export function rawStation({ plan }: PlanIndex): StationId {
  const { stations } = plan.kitchen;
  return (stations.find(({ side }) => side === 'raw') ?? must(stations[0], 'a station')).id;
}
