import type { Celsius, Instant, TaskId } from '../kernel/index.ts';
import { after, celsius } from '../kernel/index.ts';
import type { Profile } from '../safety/index.ts';
import { asksOf, keepingAsks, stageWithinS } from './check-limits.ts';
import { limitsOf } from './limits-of.ts';
import type { Live } from './live.ts';
import { bringsToPass, type Watched, watchedIn } from './watched.ts';

/** How hot or how cold food is to be at a piece of work, and by when where time counts too. */
export type LimitAt = {
  readonly atLeastC: Celsius | null;
  readonly atMostC: Celsius | null;
  readonly byAt: Instant | null;
};

/**
 * What the limits of its kitchen ask of food at this work: at a stage of its cooling, and as it
 * comes to the pass out of where it is kept hot or cold. Null where they ask for no number.
 */
export function limitAt(live: Live, id: TaskId): LimitAt | null {
  const { index } = live;
  const profile = limitsOf(index.plan);
  const batch = index.tasks.get(id)?.batch;
  const watched = batch && watchedIn(index).get(batch);
  if (!profile || !watched) return null;
  return stageAt(live, { id, profile, watched }) ?? passAt(live, { id, profile, watched });
}

type At = { readonly id: TaskId; readonly profile: Profile; readonly watched: Watched };

/** A route may ask for less than the limits let it have, never for more. */
function stageAt(live: Live, { id, profile, watched }: At): LimitAt | null {
  const { cooling, batch, food } = watched;
  const place = cooling?.stages.findIndex((task) => task.id === id) ?? -1;
  if (!cooling || place < 0) return null;
  const stage = place + 1;
  const asks = asksOf(profile, { kind: 'cooling', batch: batch.id, stage }, food);
  const within = stageWithinS(profile, stage);
  if (!asks || asks.atMostC === null || within === null) return null;
  const { startS, endS } = live.timesOf(cooling.from.task);
  const from = live.instantOf(cooling.from.end === 'start' ? startS : endS);
  const own = cooling.stages[place]?.check?.coreAtMostC ?? asks.atMostC;
  const atMostC = celsius(Math.min(own, asks.atMostC));
  return { atLeastC: null, atMostC, byAt: after(from, within) };
}

function passAt({ index }: Live, { id, profile, watched }: At): LimitAt | null {
  const [place] = watched.places;
  if (!place || !bringsToPass(index, watched, id)) return null;
  const asks = keepingAsks(profile, place.in === 'cabinet' ? 'hot-hold' : 'cold-hold');
  return asks && { atLeastC: asks.atLeastC, atMostC: asks.atMostC, byAt: null };
}
