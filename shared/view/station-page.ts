import type { Instant, TaskId } from '../kernel/index.ts';
import { minutes } from '../kernel/index.ts';
import type { StationView, TaskView } from './view.ts';

/** How many lines a wall has room for. */
export type Room = { readonly now: number; readonly next: number; readonly further: number };

export type StationPage = {
  readonly now: readonly NowTask[];
  readonly next: readonly TaskView[];
  readonly further: readonly TaskView[];
  readonly laterCount: number;
  /** When the first of what is not under *Now* is to start; null where nothing is left. */
  readonly nextAt: Instant | null;
};

/** `isDue`: it needs its hand now, which can do one thing at a time; no other line of it is due. */
export type NowTask = { readonly task: TaskView; readonly isDue: boolean };

/**
 * A task that may start within this time stands under *Now*: long enough to wash hands and fetch
 * the tray.
 */
const SOON_S = minutes(5);
/** What is further off than this is not a hand's business yet (judged, no source). */
const AHEAD_S = minutes(30);

/**
 * What a station wall shows where.
 *
 * *Now* holds, as far as there is room, and in this order of claim: what a finger has just touched
 * or picked, what help is asked for, what runs, what is due; and if there is nothing of all that,
 * the one thing that comes first, unless that is a good while off. What still waits for a moment
 * has its turn before what is due later than it: its hands are to be there then. What is left of
 * the room goes to what was just done and has trim to be weighed. Its lines stand in the order of
 * the plan, whatever state they are in, so that no line moves under a finger. The rest follows by
 * time, and before it what found no room under *Now*.
 */
export function stationPage(
  view: Pick<StationView, 'tasks' | 'later'>,
  now: Instant,
  { room, held }: { readonly room: Room; readonly held: ReadonlySet<TaskId> },
): StationPage {
  const open = view.tasks.filter(({ id, state }) => state !== 'done' || held.has(id));
  const toWeigh = view.tasks.filter((task) => !open.includes(task) && hasTrimToWeigh(task));
  const isDue = (task: TaskView) => claimOf(task, now, held) === DUE;
  const lastDue = Math.max(...open.filter(isDue).map(({ startAt }) => startAt));
  const isBefore = ({ id, state, startAt }: TaskView) =>
    state === 'waiting' && startAt > now && startAt < lastDue && !held.has(id);
  const claims = open
    .map((task) => ({ task, claim: isBefore(task) ? DUE : claimOf(task, now, held) }))
    .sort((a, b) => a.claim - b.claim || byTime(a.task, b.task));
  const due = claims.filter(({ claim }) => claim < NO_CLAIM).slice(0, Math.max(1, room.now));
  const first = claims
    .slice(0, due.length === 0 ? 1 : 0)
    .filter(({ task }) => task.startAt <= now + AHEAD_S * 1000);
  const shown = new Set([...due, ...first].map(({ task }) => task.id));
  const left = claims.filter(({ task }) => !shown.has(task.id));
  const isPressing = ({ task }: (typeof left)[number]) => pressesNow(task, now);
  const rest = [...left]
    .sort((a, b) => Number(isPressing(b)) - Number(isPressing(a)) || byTime(a.task, b.task))
    .map(({ task }) => task);
  const over = toWeigh.slice(0, Math.max(0, room.now - due.length - first.length));
  const lines = [...[...due, ...first].map(({ task }) => task), ...over];
  const needed = oneOfEachHand(lines, now);
  return {
    now: lines.map((task) => ({ task, isDue: needed.has(task.id) })).sort(byPlanned),
    next: rest.slice(0, room.next),
    further: rest.slice(room.next, room.next + room.further),
    laterCount: Math.max(0, rest.length - room.next - room.further) + view.later,
    nextAt: rest[0]?.startAt ?? null,
  };
}

/** Runs, or was to be begun by now and may be: it is minded also where a line has no room. */
export const pressesNow = ({ state, startAt }: TaskView, now: Instant): boolean =>
  state === 'running' || (state === 'ready' && startAt <= now);

const hasTrimToWeigh = ({ tubs }: TaskView) => tubs?.some(({ isWeighed }) => !isWeighed) ?? false;

/** Of what needs a hand now, what each hand is to do first; what nobody was given is for anyone. */
function oneOfEachHand(lines: readonly TaskView[], now: Instant): ReadonlySet<TaskId> {
  const claims = lines
    .map((task) => ({ task, claim: claimOf(task, now, NOBODY) }))
    .filter(({ claim }) => claim < NO_CLAIM)
    .sort((a, b) => a.claim - b.claim || byTime(a.task, b.task))
    .map(({ task }) => task);
  const isFirst = ({ id, hand }: TaskView) =>
    hand === null || claims.find((other) => other.hand === hand)?.id === id;
  return new Set(claims.filter(isFirst).map(({ id }) => id));
}

const DUE = 3;
const NO_CLAIM = 4;
const NOBODY: ReadonlySet<TaskId> = new Set();

function claimOf(task: TaskView, now: Instant, held: ReadonlySet<TaskId>): number {
  if (held.has(task.id)) return 0;
  if (task.state === 'done' || task.state === 'waiting') return NO_CLAIM;
  if (task.helpAskedAt !== null) return 1;
  if (task.state === 'running') return 2;
  return task.startAt <= now + SOON_S * 1000 ? DUE : NO_CLAIM;
}

const byTime = (a: TaskView, b: TaskView) => a.startAt - b.startAt || byPlan(a, b);
const byPlan = (a: TaskView, b: TaskView) => a.plannedStartAt - b.plannedStartAt || byName(a, b);
const byPlanned = (a: NowTask, b: NowTask) => byPlan(a.task, b.task);
const byName = (a: TaskView, b: TaskView) => (a.id < b.id ? -1 : 1);
