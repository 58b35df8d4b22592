import type { DayState, Live } from '../day/index.ts';
import { currentHand } from '../day/index.ts';
import type { Instant, PersonId, TaskId } from '../kernel/index.ts';
import type { Side } from './view.ts';

type Begun = { readonly task: TaskId; readonly at: Instant };

/** On which side of the kitchen a task is done: at a station where raw meat lies, or not. */
export function sideOf({ index }: Live, id: TaskId): Side {
  const station = index.tasks.get(id)?.station;
  return index.plan.kitchen.stations.find((each) => each.id === station)?.side ?? 'clean';
}

/**
 * Whether the hands that do this come straight from raw meat to what is clean: by what they began
 * last before it, whatever was planned.
 */
export function comesOffRaw(live: Live, id: TaskId): boolean {
  const hand = currentHand(live.state, live.index, id);
  if (hand === null || sideOf(live, id) === 'raw') return false;
  const all = begunIn(live.state).get(hand) ?? [];
  const own = all.findIndex(({ task }) => task === id);
  const before = all.at(own < 0 ? -1 : own - 1);
  if (!before || own === 0) return false;
  return sideOf(live, before.task) === 'raw';
}

/** What each hand has begun, in the order of its times. */
function begunIn(state: DayState): ReadonlyMap<PersonId, readonly Begun[]> {
  const known = read.get(state);
  if (known) return known;
  const begun = new Map<PersonId, Begun[]>();
  for (const [task, { started, hand }] of state.tasks) {
    if (!started || hand === null) continue;
    begun.set(hand, [...(begun.get(hand) ?? []), { task, at: started.at }]);
  }
  for (const all of begun.values()) all.sort((a, b) => a.at - b.at);
  read.set(state, begun);
  return begun;
}

/** A state never changes, and every line of every wall asks. */
const read = new WeakMap<DayState, ReadonlyMap<PersonId, readonly Begun[]>>();
