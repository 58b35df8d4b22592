import type { Because, Live } from '../day/index.ts';
import { because, passagesOf } from '../day/index.ts';
import type { Instant, TaskId, Text } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';

/** What holds a late service up, at the head of the chain that decides it. */
export type HeldBy =
  /** A cook, of which dish, and till when as it is foreseen; null once it was to be over. */
  | { readonly kind: 'cooks'; readonly dish: Text; readonly till: Instant | null }
  /** What is under way, and till when. */
  | { readonly kind: 'runs'; readonly task: Text; readonly till: Instant | null }
  /** What cannot be begun: no rack is free, a fire or a hand is out. */
  | { readonly kind: 'waits'; readonly task: Text; readonly because: Because }
  /** Nothing yet, but of many cooks one or another may take longer than usual. */
  | { readonly kind: 'may run long' }
  /** What may be begun, and nobody has. */
  | { readonly kind: 'begin'; readonly task: Text };

/** Why a task waits that is more than the order of work: somebody may see to it. */
const STANDS: ReadonlySet<Because['kind']> = new Set([
  ...(['hand', 'place', 'fire', 'room', 'shift', 'down', 'out', 'barred'] as const),
]);

/** How the first of a chain that nothing stands before holds up what comes after it. */
export function heldBy(live: Live, id: TaskId): HeldBy {
  const { index, state, now } = live;
  const { title, work, batch } = must(index.tasks.get(id), id);
  const passage = passagesOf(state).get(id);
  if (passage?.startedAt != null) {
    const endAt = live.instantOf(live.timesOf(id).endS);
    const till = endAt > now ? endAt : null;
    const dish = index.batches.get(batch)?.dish;
    const named = index.plan.catalogue.dishes.find((each) => each.id === dish);
    if (work === 'fire' && named) return { kind: 'cooks', dish: named.name, till };
    return { kind: 'runs', task: title, till };
  }
  const why = because(live, id);
  if (why && STANDS.has(why.kind)) return { kind: 'waits', task: title, because: why };
  return { kind: 'begin', task: title };
}
