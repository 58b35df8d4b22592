import type { Instant, PersonId, Seconds, SlotId, TaskId } from '../kernel/index.ts';
import { minutes, must } from '../kernel/index.ts';
import { currentHands, loadsOf } from './arrangement.ts';
import type { Live } from './live.ts';
import { factsOf } from './state.ts';

/** Whose time or which rack a task has: hands that work, a rack that something lies in. */
export function ownersOf({ state, index }: Live, task: TaskId): readonly (PersonId | SlotId)[] {
  const { work } = must(index.tasks.get(task), task);
  if (work === 'place') return loadsOf(state, index, task).map(({ slot }) => slot);
  if (work !== 'hands') return [];
  const planned = currentHands(state, index, task);
  const { hand } = factsOf(state, task);
  return hand === null || planned.includes(hand) ? planned : [hand];
}

/** Where a task would stand, and when, on a day as it would be. */
export type WouldBe = {
  readonly task: TaskId;
  readonly owners: readonly (PersonId | SlotId)[];
  readonly startAt: Instant;
  readonly endAt: Instant;
};

/** What moves by less is drawn where it is. */
const SEEN_S: Seconds = minutes(1);

/** Of what waits, all that would stand elsewhere or at another time, the first to begin first. */
export function wouldBeIn(live: Live, next: Live): WouldBe[] {
  return live.index.plan.built.tasks
    .filter(({ id }) => live.timeline.times(id).stage === 'waiting')
    .flatMap(({ id }) => {
      const [was, is] = [live.timesOf(id), next.timesOf(id)];
      const [before, owners] = [ownersOf(live, id), ownersOf(next, id)];
      const isElsewhere = owners.join() !== before.join();
      const byS = Math.max(Math.abs(is.startS - was.startS), Math.abs(is.endS - was.endS));
      if (owners.length === 0 || (!isElsewhere && byS < SEEN_S)) return [];
      const [startAt, endAt] = [next.instantOf(is.startS), next.instantOf(is.endS)];
      return [{ task: id, owners, startAt, endAt }];
    })
    .sort((a, b) => a.startAt - b.startAt);
}
