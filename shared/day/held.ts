import type { Instant, PersonId, SmokerId, TaskId } from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import { findSlot } from '../kitchen/index.ts';
import { currentHands, loadsOf } from './arrangement.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';

const MINUTE_MS = 60_000;

/** What a task waits for that no plan foresaw, and till when, where anybody knows. */
export type Hold =
  | { readonly kind: 'smoker'; readonly smoker: SmokerId; readonly backAt: Instant | null }
  | { readonly kind: 'hand'; readonly hand: PersonId; readonly backAt: Instant | null };

/** Every task that has not begun and is held, by what holds it. */
export function holdsOf(state: DayState): ReadonlyMap<TaskId, Hold> {
  const known = read.get(state);
  if (known) return known;
  const holds = state.plan ? readHolds(state, indexOf(state.plan)) : new Map<TaskId, Hold>();
  read.set(state, holds);
  return holds;
}

const read = new WeakMap<DayState, ReadonlyMap<TaskId, Hold>>();

function readHolds(state: DayState, index: PlanIndex): Map<TaskId, Hold> {
  const holds = new Map<TaskId, Hold>();
  const { spells, out } = state.happened;
  const waits = (task: TaskId) => passagesOf(state).get(task)?.startedAt == null;
  if (out.size > 0) {
    for (const { id, work } of index.tasks.values()) {
      if (work !== 'hands' || !waits(id)) continue;
      const hand = currentHands(state, index, id).find((each) => out.has(each));
      const absence = hand && out.get(hand);
      if (absence) holds.set(id, { kind: 'hand', hand, backAt: absence.backAt });
    }
  }
  for (const { smoker, kind, until, backAt } of spells) {
    if (kind !== 'down' || until !== null) continue;
    for (const id of heldBy(state, index, smoker)) {
      if (waits(id)) holds.set(id, { kind: 'smoker', smoker, backAt });
    }
  }
  return holds;
}

/**
 * What cannot begin without that smoker: the stays in it, the hands that load them, and the stages
 * of their cooks. Who takes something off is held by nothing.
 */
export function heldBy(state: DayState, index: PlanIndex, smoker: SmokerId): Set<TaskId> {
  const held = new Set<TaskId>();
  for (const { id, work, batch } of index.tasks.values()) {
    if (work !== 'place' || smokerOfStay(state, index, id) !== smoker) continue;
    held.add(id);
    for (const { from, to, minS } of index.lagsInto.get(id) ?? []) {
      const isLoading = to.end === 'start' && minS !== undefined && minS >= 0;
      if (isLoading && index.tasks.get(from.activity)?.work === 'hands') held.add(from.activity);
    }
    for (const stage of index.tasks.values()) {
      if (stage.batch === batch && stage.work === 'fire') held.add(stage.id);
    }
  }
  return held;
}

/** The smoker that a stay is in, or will come to. */
function smokerOfStay(state: DayState, index: PlanIndex, stay: TaskId): SmokerId | null {
  const [load] = loadsOf(state, index, stay);
  return load ? (findSlot(index.plan.kitchen, load.slot)?.smoker.id ?? null) : null;
}

/**
 * Where nobody says when, or what was said is past, not before the next full minute: walls show no
 * less, and need not be drawn anew for it.
 */
export const heldUntil = (backAt: Instant | null, now: Instant): Instant =>
  instant(Math.max(backAt ?? 0, Math.ceil(now / MINUTE_MS) * MINUTE_MS));
