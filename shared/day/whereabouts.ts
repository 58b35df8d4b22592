import type { Instant, SlotId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { loadsOf } from './arrangement.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';

/** The slots a load has been in since `startedAt`, the first from then on; undone moves not. */
export function slotsOf(
  state: DayState,
  index: PlanIndex,
  stay: TaskId,
  startedAt: Instant,
): readonly { readonly at: Instant; readonly slot: SlotId }[] {
  const undone = new Set(
    state.story.flatMap((told) => (told.kind === 'undone' ? told.command : [])),
  );
  const moves = state.story.flatMap((told) => {
    if (told.kind !== 'slotsMoved' || undone.has(told.commandId)) return [];
    const own = told.moves.find((move) => move.stay === stay);
    return own ? [{ at: told.at, slot: own.to }] : [];
  });
  const now = must(loadsOf(state, index, stay)[0], stay).slot;
  const planned = must(index.placements.get(stay), stay).mode as string as SlotId;
  const before = moves.findLast(({ at }) => at <= startedAt)?.slot;
  const since = moves.filter(({ at }) => at > startedAt);
  const first = before ?? (since.length > 0 ? planned : now);
  return [{ at: startedAt, slot: first }, ...since];
}
