import type { Instant, StationId } from '../kernel/index.ts';
import { after, must, seconds } from '../kernel/index.ts';
import type { CheckEntry } from './check-event.ts';
import { brokenBy, stageWithinS } from './check-limits.ts';
import { type Cooked, openAs } from './check-standing.ts';
import { standingOfCheck } from './check-story.ts';
import { keptIn } from './holds.ts';
import type { Looking, OpenCheck } from './open-check.ts';
import { passagesOf } from './passage.ts';
import type { Watched } from './watched.ts';

/** A stage is looked at when this share of its time is over, so that there is time to help. */
const LOOK_AT = 0.75;

/** What cools, as its route has it or since it is kept for another day: stage after stage. */
export function coolingChecks(look: Looking, watched: Watched): OpenCheck[] {
  const began = beganCooling(look, watched);
  if (!began) return [];
  return stageChecks(look, watched, { ...began, stage: 1 });
}

type Began = { readonly from: Instant; readonly station: StationId };

/** When it began to cool, and on whose wall it stands; null where it does not. */
export function beganCooling({ state, index }: Looking, watched: Watched): Began | null {
  const { batch, cooling, places } = watched;
  if ((state.happened.carried.get(batch.id) ?? 0) > 0) {
    const carried = state.story.findLast(
      (told) => told.kind === 'leftCarriedOver' && told.batch === batch.id,
    );
    const hot = keptIn(state, index, places).find((each) => each.in === 'cabinet');
    const task = hot && must(index.tasks.get(hot.task), hot.task);
    return task && carried ? { from: carried.at, station: task.station } : null;
  }
  if (!cooling) return null;
  const { task, end } = cooling.from;
  const { startedAt, finishedAt } = must(passagesOf(state).get(task), task);
  const from = end === 'start' ? startedAt : finishedAt;
  const { station } = cooling.stages[0] ?? must(index.tasks.get(task), task);
  return from === null ? null : { from, station };
}

/** What cools: a batch of the day, or what another kept. */
export type Cools = Cooked & Pick<Watched, 'cooling'>;

/** The first stage that is not reached yet; a later one that is speaks for those before. */
export function stageChecks(
  look: Looking,
  watched: Cools,
  { from, station, stage }: Began & { readonly stage: number },
): OpenCheck[] {
  const within = stageWithinS(look.profile, stage);
  if (within === null) return [];
  const on = { kind: 'cooling', batch: watched.batch.id, stage } as const;
  const lateAt = after(from, within);
  const broken = ({ kind, at, ...entry }: CheckEntry) => {
    if (kind !== 'checkRecorded' || !('tempC' in entry)) return null;
    const tookS = seconds((at - from) / 1000);
    return brokenBy(look.profile, { on, food: watched.food, tempC: entry.tempC, tookS });
  };
  // Too warm while there is time is no failure yet: it is looked at again.
  const said = new Map(look.said);
  const key = `cooling ${watched.batch.id} ${stage}`;
  const entries = (said.get(key) ?? []).filter(
    (entry) => entry.kind !== 'checkRecorded' || entry.at > lateAt || broken(entry) === null,
  );
  said.set(key, entries);
  const standing = standingOfCheck(said, on, { since: from, broken });
  const isMet = standing.kind === 'open' && standing.okAt !== null;
  if (isMet) return stageChecks(look, watched, { from, station, stage: stage + 1 });
  const task = watched.cooling?.stages[stage - 1];
  const begun = task && passagesOf(look.state).get(task.id)?.startedAt;
  const dueAt = begun ?? after(from, seconds(within * LOOK_AT));
  const times = { fromAt: from, dueAt, lateAt };
  return openAs(look, watched, { on, station, standing, times }).map((open) => ({
    ...open,
    allowed: allowedOf(look, open, stage),
  }));
}

/** Panning shallower helps while there is time, and after the last stage nothing does. */
function allowedOf({ profile }: Looking, { allowed }: OpenCheck, stage: number) {
  const isLast = stageWithinS(profile, stage + 1) === null;
  return allowed.filter(
    (action) => action === 'discard' || (action === 'reheat-at-once' && !isLast),
  );
}
