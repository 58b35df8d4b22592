import type { Instant, SlotId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { loadsOf } from './arrangement.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import type { Told } from './story.ts';

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
    if (undone.has(told.commandId)) return [];
    const slot = slotGiven(told, stay);
    return slot ? [{ at: told.at, slot }] : [];
  });
  const now = must(loadsOf(state, index, stay)[0], stay).slot;
  const planned = must(index.placements.get(stay), stay).mode as string as SlotId;
  const before = moves.findLast(({ at }) => at <= startedAt)?.slot;
  const since = moves.filter(({ at }) => at > startedAt);
  const first = before ?? (since.length > 0 ? planned : now);
  return [{ at: startedAt, slot: first }, ...since];
}

/** Where a load was moved to by that; a way of lying has the name of its slot. */
function slotGiven(told: Told, stay: TaskId): SlotId | undefined {
  if (told.kind === 'slotsMoved') return told.moves.find((move) => move.stay === stay)?.to;
  if (told.kind !== 'dayMended') return undefined;
  return told.changes.find(({ activity }) => activity === stay)?.mode as SlotId | undefined;
}
