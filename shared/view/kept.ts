import type { Live } from '../day/index.ts';
import { passagesOf } from '../day/index.ts';
import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { after, instant, must, seconds } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';

/** Since when something is kept in a cabinet or a cooler, and how long its route lets it. */
type Hold = { readonly since: Instant; readonly mostS: Seconds };

/** Where a batch is kept now: the last of the places that it came to; null where nowhere yet. */
export function holdOf(live: Live, tasks: readonly Task[], serve: TaskId): Hold | null {
  const holds = tasks.flatMap(({ id }): Hold[] => {
    const mostS = keptAtMostS(live, id, serve);
    const since = mostS === null ? null : beganAt(live, id);
    if (mostS === null || since === null || since > live.now) return [];
    return passagesOf(live.state).get(id)?.finishedAt == null ? [{ since, mostS }] : [];
  });
  return holds.sort((a, b) => b.since - a.since)[0] ?? null;
}

/**
 * The longest that its route lets it be kept in a cabinet, or in the cooler till it is sold; null
 * for any other task, such as a night in the cooler before the fire.
 */
function keptAtMostS(live: Live, task: TaskId, serve: TaskId): Seconds | null {
  const mode = live.index.activities.get(task)?.modes[0];
  if (mode?.length.kind !== 'wait') return null;
  const isWarm = mode.needs.some(({ role }) => role === 'pans' || role === 'whole');
  const isCold = mode.needs.some(({ role }) => role === 'cooler') && endsWith(live, task, serve);
  return isWarm || isCold ? mode.length.maxS : null;
}

const endsWith = ({ index }: Live, task: TaskId, serve: TaskId): boolean =>
  (index.lagsInto.get(task) ?? []).some(
    ({ from, to }) => to.end === 'end' && from.activity === serve && from.end === 'end',
  );

/**
 * When a wait began. No hand marks the change from one wait to the next, as from venting to the
 * rest in the cabinet: the planned length of the first does, and it may lie ahead.
 */
function beganAt(live: Live, task: TaskId): Instant | null {
  const { startedAt } = must(passagesOf(live.state).get(task), task);
  if (startedAt !== null) return startedAt;
  const before = (live.index.lagsInto.get(task) ?? []).filter(
    ({ to, minS }) => to.end === 'start' && minS !== undefined && minS >= 0,
  );
  const times = before.map(({ from }) => momentOf(live, from.activity, from.end));
  if (times.length === 0 || times.includes(null)) return null;
  return instant(Math.max(...times.map(Number)));
}

function momentOf(live: Live, task: TaskId, end: 'start' | 'end'): Instant | null {
  if (end === 'start') return beganAt(live, task);
  const { finishedAt } = must(passagesOf(live.state).get(task), task);
  if (finishedAt !== null || live.index.tasks.get(task)?.work !== 'wait') return finishedAt;
  const began = beganAt(live, task);
  const { startS, endS } = must(live.index.placements.get(task), task);
  return began && after(began, seconds(endS - startS));
}
