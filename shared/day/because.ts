import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds, unreachable } from '../kernel/index.ts';
import type { PersonName, SlotName, SmokerName, TaskName } from '../plan/index.ts';
import { kitchenResource } from '../plan/index.ts';
import type { Reason } from '../schedule/index.ts';
import { whyBarred } from './barred.ts';
import type { CheckKind } from './check-event.ts';
import { holdsOf } from './held.ts';
import type { Live } from './live.ts';
import { passagesOf } from './passage.ts';
import { personName, slotName, smokerName, taskName } from './plan-index.ts';
import { undoneBefore } from './ready.ts';

/**
 * Why a task is when it is, as data with the names of its subjects; `shared/words` makes the
 * sentence.
 */
export type Because =
  | { readonly kind: 'after'; readonly task: TaskName; readonly waitS: Seconds }
  | { readonly kind: 'hand'; readonly person: PersonName; readonly busyWith: TaskName }
  | { readonly kind: 'place'; readonly slot: SlotName; readonly until: Instant }
  | { readonly kind: 'fire'; readonly smoker: SmokerName; readonly until: Instant }
  /** A table, a cabinet or a cooler that another takes up. */
  | { readonly kind: 'room'; readonly busyWith: TaskName; readonly until: Instant }
  | { readonly kind: 'shift'; readonly person: PersonName; readonly from: Instant }
  | { readonly kind: 'plan'; readonly at: Instant }
  | { readonly kind: 'now' }
  /** What nobody planned: a smoker is out, or who was to do it. */
  | { readonly kind: 'down'; readonly smoker: SmokerName; readonly backAt: Instant | null }
  | { readonly kind: 'out'; readonly person: PersonName; readonly backAt: Instant | null }
  /** A limit was not kept, or nobody looked in time. */
  | { readonly kind: 'barred'; readonly check: CheckKind };

/** What the start of a task hangs on; null once it has started. */
export function because(live: Live, task: TaskId): Because | null {
  return (
    barredBecause(live, task) ?? heldBecause(live, task) ?? saidOf(live, task, live.reasonFor(task))
  );
}

function barredBecause({ state, index, now }: Live, task: TaskId): Because | null {
  if (passagesOf(state).get(task)?.startedAt != null) return null;
  const bar = whyBarred(state, index, { task, at: now });
  return bar?.rule === 'barred' ? { kind: 'barred', check: bar.check } : null;
}

function heldBecause({ state, index }: Live, task: TaskId): Because | null {
  const hold = holdsOf(state).get(task);
  if (!hold) return null;
  const { backAt } = hold;
  const { kitchen } = index.plan;
  if (hold.kind === 'smoker') {
    return { kind: 'down', smoker: must(smokerName(kitchen, hold.smoker), hold.smoker), backAt };
  }
  return { kind: 'out', person: must(personName(kitchen, hold.hand), hold.hand), backAt };
}

function saidOf(live: Live, task: TaskId, reason: Reason): Because | null {
  const startAt = live.instantOf(live.timesOf(task).startS);
  switch (reason.kind) {
    case 'fact':
    case 'length':
      return null;
    case 'now':
    case 'held': {
      // All that is overdue is expected now: then the order is what holds it up, not the clock.
      const before = undoneBefore(live.state, task);
      if (!before) return { kind: 'now' };
      return { kind: 'after', task: taskName(live.index, before), waitS: seconds(0) };
    }
    case 'plan':
    case 'release':
    case 'yields':
      return { kind: 'plan', at: startAt };
    case 'lag': {
      if (reason.bound === 'most') return { kind: 'plan', at: startAt };
      const { from, minS } = reason.lag;
      const before = taskName(live.index, from.activity);
      return { kind: 'after', task: before, waitS: minS ?? seconds(0) };
    }
    case 'link':
      return takenBy(live, reason.link);
    case 'shift': {
      const thing = kitchenResource(reason.resource);
      const person = thing.kind === 'hand' && personName(live.index.plan.kitchen, thing.person);
      return person ? { kind: 'shift', person, from: startAt } : { kind: 'plan', at: startAt };
    }
    default:
      return unreachable(reason);
  }
}

type Link = Extract<Reason, { kind: 'link' }>['link'];

function takenBy(live: Live, { from, resource, gapS }: Link): Because {
  const { kitchen } = live.index.plan;
  const busyWith = taskName(live.index, from);
  const until = live.instantOf(seconds(live.timesOf(from).endS + gapS));
  const thing = kitchenResource(resource);
  switch (thing.kind) {
    case 'hand': {
      const person = personName(kitchen, thing.person);
      return { kind: 'hand', person: must(person, thing.person), busyWith };
    }
    case 'slot':
      return { kind: 'place', slot: must(slotName(kitchen, thing.slot), thing.slot), until };
    case 'fire': {
      const smoker = kitchen.smokers.find(({ id }) => id === thing.smoker);
      const { id, name } = must(smoker, thing.smoker);
      return { kind: 'fire', smoker: { id, name }, until };
    }
    default:
      return { kind: 'room', busyWith, until };
  }
}
