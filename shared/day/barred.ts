import type { BatchId, DishId, Instant, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Breach } from '../plan/index.ts';
import type { OpenCheck } from './open-check.ts';
import { openChecks } from './open-checks.ts';
import { passagesOf } from './passage.ts';
import { indexOf, type PlanIndex } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';
import { watchedIn } from './watched.ts';

/** What keeps a batch from the pass. */
export type Bar = { readonly why: 'failed' | 'missed'; readonly check: OpenCheck };

/** Whether a check was not kept, or not looked at in time, as things stand at `at`. */
export function whyOpen(check: OpenCheck, at: Instant): Bar['why'] | null {
  if (check.failed || check.isMending) return 'failed';
  return at >= check.lateAt ? 'missed' : null;
}

/** What keeps each batch from the pass at `at`, the first of it. */
export function barsOf(state: DayState, at: Instant): ReadonlyMap<BatchId, Bar> {
  const known = remembered.get(state);
  if (known?.at === at) return known.bars;
  const bars = barsIn(state, at);
  remembered.set(state, { at, bars });
  return bars;
}

/** Every pan of the pass asks at the same moment. */
const remembered = new WeakMap<
  DayState,
  { readonly at: Instant; readonly bars: ReadonlyMap<BatchId, Bar> }
>();

function barsIn(state: DayState, at: Instant): ReadonlyMap<BatchId, Bar> {
  const bars = new Map<BatchId, Bar>();
  for (const check of openChecks(state)) {
    const why = whyOpen(check, at);
    if (!why) continue;
    for (const batch of barredBy(state, check)) {
      if (!bars.has(batch)) bars.set(batch, { why, check });
    }
  }
  return bars;
}

/** What a broken or missed check bars: its batch, or all that lay in a cooler or came so warm. */
function barredBy(state: DayState, { on, failed }: OpenCheck): BatchId[] {
  if ('batch' in on) return [on.batch];
  const index = indexOf(must(state.plan, 'a plan'));
  const batches = [...index.batches.values()];
  if (!failed) return [];
  if (on.kind === 'receiving') {
    // Also what was begun before: a delivery's time is when it was written down, and meat is taken
    // up as it comes and typed in after. No event says that a batch cannot be of it.
    return batches.filter(({ bought }) => bought === on.cut).map(({ id }) => id);
  }
  if (on.kind !== 'cold-hold') return [];
  const resource = `cooler:${on.cooler}`;
  const passages = passagesOf(state);
  return [...index.tasks.values()].flatMap(({ id, batch }) => {
    const uses = index.placements.get(id)?.uses ?? [];
    if (!uses.some((use) => use.resource === resource)) return [];
    const { startedAt, finishedAt } = must(passages.get(id), id);
    const wasIn = startedAt !== null && startedAt <= failed.at;
    return wasIn && (finishedAt === null || finishedAt > failed.at) ? [batch] : [];
  });
}

/**
 * Why a task must not begin, as a refusal: raw food that was out too long is not worked on, and
 * what is barred is not brought to the pass. At the pass the end of its cook must have been read.
 */
export function whyBarred(
  state: DayState,
  index: PlanIndex,
  { task, at }: { readonly task: TaskId; readonly at: Instant },
): Refusal | null {
  const { batch: id } = must(index.tasks.get(task), task);
  const watched = watchedIn(index).get(id);
  if (!watched) return null;
  if (isDiscarded(state, id)) return refusal(index, id, { why: 'discarded', check: null });
  const isToPass = watched.toPass.has(task);
  const own = openChecks(state).find(({ on }) => {
    const isIts = 'batch' in on && on.batch === id;
    return isIts && isToPass && on.kind === 'end-temperature';
  });
  if (own) return refusal(index, id, { why: whyOpen(own, at) ?? 'missed', check: own });
  const bar = barsOf(state, at).get(id);
  if (!bar || !(isToPass || bar.check.on.kind === 'out-of-temperature')) return null;
  return refusal(index, id, bar);
}

/** Why no more is sold of a dish: all of it that stands at the pass is barred. */
export function whySaleBarred(
  state: DayState,
  index: PlanIndex,
  { dish, tappedAt }: { readonly dish: DishId; readonly tappedAt: Instant },
): Refusal | null {
  const bars = barsOf(state, tappedAt);
  if (bars.size === 0) return null;
  const passages = passagesOf(state);
  const { emptied, carried } = state.happened;
  const left = [...watchedIn(index).values()].filter(
    ({ batch: { id, dish: of }, serve }) =>
      of === dish &&
      passages.get(serve)?.startedAt != null &&
      !(emptied.has(id) || carried.has(id)),
  );
  const [first] = left;
  const bar = first && bars.get(first.batch.id);
  if (!bar || left.some(({ batch: { id } }) => !bars.has(id))) return null;
  return refusal(index, first.batch.id, bar);
}

/** Whether somebody said that a batch was thrown out since a limit was not kept. */
export const isDiscarded = ({ checks }: DayState, batch: BatchId): boolean =>
  checks.some(
    (entry) =>
      entry.kind === 'correctionRecorded' &&
      entry.action === 'discard' &&
      'batch' in entry.on &&
      entry.on.batch === batch,
  );

type Why =
  | { readonly why: 'discarded'; readonly check: null }
  | { readonly why: Bar['why']; readonly check: OpenCheck };

function refusal({ groups }: PlanIndex, id: BatchId, { why, check }: Why): Refusal {
  const batch = must(groups.get(id), id).name;
  const kind = check?.on.kind ?? 'discard-time';
  return { rule: 'barred', batch, why, check: kind, breach: check && breachOfCheck(check) };
}

/** The row that asks for a check, with what was found where somebody looked; null: the route's. */
export function breachOfCheck({ failed, row, asked }: OpenCheck): Breach | null {
  if (failed) return failed.breach;
  return row && { row, asked, found: null };
}
