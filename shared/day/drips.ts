import type { Instant, Span, TaskId } from '../kernel/index.ts';
import { after, instant, must, overlaps, seconds } from '../kernel/index.ts';
import { resourceId } from '../plan/index.ts';
import type { Clash } from '../schedule/index.ts';
import { loadsOf } from './arrangement.ts';
import { passagesOf } from './passage.ts';
import { type PlanIndex, slotName, taskName } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';

/**
 * What a load that goes in at `at` would drip on, or what lies there would drip on it, against a
 * row of the limits; null where nothing does. What is in stays as long as it was planned to, at
 * the least.
 */
export function dripsAtLoad(
  state: DayState,
  index: PlanIndex,
  { task, at }: { readonly task: TaskId; readonly at: Instant },
): Refusal | null {
  const passages = passagesOf(state);
  const inSince = (stay: TaskId): Instant | null => {
    const passage = passages.get(stay);
    return passage?.finishedAt == null ? (passage?.startedAt ?? null) : null;
  };
  for (const stay of staysFrom(index, task)) {
    for (const clash of index.plan.built.problem.clashes) {
      const ids = [clash.upper.activity, clash.lower.activity];
      const other = ids.find((id) => id !== stay);
      const since = ids.includes(stay) && other ? inSince(other) : null;
      if (!other || since === null || !isAbove(state, index, clash)) continue;
      const [up, low] = [clash.upper, clash.lower].map((each) =>
        partFrom(index, each, { since: each.activity === stay ? at : since, at }),
      );
      if (!up || !low || !overlaps(up, low)) continue;
      return dripping(state, index, { clash, stay, other });
    }
  }
  return null;
}

const staysFrom = (index: PlanIndex, task: TaskId): TaskId[] =>
  (index.lagsOutOf.get(task) ?? [])
    .filter(({ to, minS }) => to.end === 'start' && minS !== undefined && minS >= 0)
    .map(({ to }) => to.activity)
    .filter((id) => index.tasks.get(id)?.work === 'place');

function isAbove(state: DayState, index: PlanIndex, { upper, lower, places }: Clash): boolean {
  const [up, low] = [upper, lower].map(({ activity }) => {
    const [load] = loadsOf(state, index, activity);
    return load && resourceId({ kind: 'slot', slot: load.slot });
  });
  return places.some((pair) => pair[0] === up && pair[1] === low);
}

/** The part that drips or is dripped on, of a load that is in since then. */
function partFrom(
  index: PlanIndex,
  { activity, part }: Clash['upper'],
  { since, at }: { readonly since: Instant; readonly at: Instant },
): Span<Instant> {
  const { startS, endS } = must(index.placements.get(activity), activity);
  const outAt = Math.max(after(since, seconds(endS - startS)), at + A_MOMENT_MS);
  const end = part.toS === undefined ? outAt : Math.min(outAt, after(since, part.toS));
  return { start: instant(Math.max(at, after(since, part.fromS))), end: instant(end) };
}

/** What is in has not come out. */
const A_MOMENT_MS = 1;

type Dripping = { readonly clash: Clash; readonly stay: TaskId; readonly other: TaskId };

function dripping(state: DayState, index: PlanIndex, { clash, stay, other }: Dripping): Refusal {
  const { rows } = index.plan.built;
  const row = must(
    rows.find(({ id }) => id === clash.reason),
    clash.reason,
  );
  const [load] = loadsOf(state, index, stay);
  const slot = must(slotName(index.plan.kitchen, must(load, stay).slot), stay);
  return { rule: 'drips', slot, other: taskName(index, other), row };
}
