import type { Instant, SlotId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { loadsOf } from './arrangement.ts';
import { groupBy, type PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import type { Told } from './story.ts';

type Moved = { readonly stay: TaskId; readonly at: Instant; readonly slot: SlotId };

/** Read off a story once: every line of every wall may ask where its load has been. */
const movesIn = new WeakMap<DayState['story'], ReadonlyMap<TaskId, readonly Moved[]>>();

/** The slots a load has been in since `startedAt`, the first from then on; undone moves not. */
export function slotsOf(
  state: DayState,
  index: PlanIndex,
  stay: TaskId,
  startedAt: Instant,
): readonly { readonly at: Instant; readonly slot: SlotId }[] {
  const moves = movesOf(state).get(stay) ?? [];
  const now = must(loadsOf(state, index, stay)[0], stay).slot;
  const planned = must(index.placements.get(stay), stay).mode as string as SlotId;
  const before = moves.findLast(({ at }) => at <= startedAt)?.slot;
  const since = moves.filter(({ at }) => at > startedAt);
  const first = before ?? (since.length > 0 ? planned : now);
  return [{ at: startedAt, slot: first }, ...since.map(({ at, slot }) => ({ at, slot }))];
}

function movesOf({ story }: DayState): ReadonlyMap<TaskId, readonly Moved[]> {
  const known = movesIn.get(story);
  if (known) return known;
  const undone = new Set(story.flatMap((told) => (told.kind === 'undone' ? told.command : [])));
  const standing = story.filter(({ commandId }) => !undone.has(commandId));
  const moves = groupBy(standing.flatMap(slotsGiven), ({ stay }) => stay);
  movesIn.set(story, moves);
  return moves;
}

/** Where loads were moved to by that; a way of lying has the name of its slot. */
function slotsGiven(told: Told): Moved[] {
  const { at } = told;
  if (told.kind === 'slotsMoved') return told.moves.map(({ stay, to }) => ({ stay, at, slot: to }));
  if (told.kind !== 'dayMended') return [];
  return told.changes.map(({ activity, mode }) => {
    return { stay: activity, at, slot: mode as string as SlotId };
  });
}
