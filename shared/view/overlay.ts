import type { Command, CommandHead, CureIntent, TaskIntent } from '../day/index.ts';
import type { Instant, TaskId } from '../kernel/index.ts';
import { instant, unreachable } from '../kernel/index.ts';
import { layChecked } from './check-view.ts';
import { layCarried } from './day-end.ts';
import { layPass } from './overlay-pass.ts';
import { layPeople } from './overlay-people.ts';
import { layDoor, layMoves, layReading, loadMark } from './overlay-smokers.ts';
import { layTub } from './overlay-tubs.ts';
import { layDelivery } from './pull-rows.ts';
import type { TaskView } from './view.ts';
import type { View } from './views.ts';
import { isWork } from './views.ts';

/**
 * How far a tap has come that the hub's view does not hold: drawn only, or on this device's disk.
 */
export type Mark = 'tapped' | 'here';

/** A tap of this device that the hub's view does not hold yet. */
export type PendingTap = { readonly command: Command; readonly mark: Mark };

/** The view with this device's own taps laid over it, and what they touched. */
export type Drawn<V extends View = View> = {
  readonly view: V;
  /**
   * By the id of the task, smoker, dish, batch, cut or hand, or `loadMark`; what is not in it the
   * hub has.
   */
  readonly marks: ReadonlyMap<string, Mark>;
};

/**
 * Lays the taps that the hub has not shown yet over its view, in their order, so that a finger sees
 * ink at once. It decides nothing: a tap that makes no sense any more leaves the view as it is, and
 * the hub's word follows.
 */
export function overlay<V extends View>(view: V, pending: readonly PendingTap[]): Drawn<V> {
  const marks = new Map<string, Mark>();
  const drawn = withoutUndone(pending).reduce<View>((shown, { command, mark }) => {
    const next = lay(shown, command, view);
    if (next !== shown) for (const key of touched(command)) marks.set(key, mark);
    return next;
  }, view);
  return { view: drawn as V, marks };
}

/** What was taken back before the hub saw it never was; what it has seen it takes back itself. */
function withoutUndone(pending: readonly PendingTap[]): readonly PendingTap[] {
  const undone = pending.flatMap(({ command }) =>
    command.kind === 'undo' ? [command.command] : [],
  );
  return pending.filter(({ command }) => !undone.includes(command.id));
}

function touched(command: Command): readonly string[] {
  switch (command.kind) {
    case 'reading':
      return [command.where.kind === 'air' ? command.where.smoker : command.where.stay];
    case 'moveSlots':
      return command.moves.map(({ stay, need }) => loadMark(stay, need));
    case 'doorOpen':
      return [command.smoker];
    case 'note':
      return command.task === null ? [] : [command.task];
    case 'sold':
    case 'soldOut':
      return [command.dish];
    case 'panEmpty':
    case 'carryOver':
    case 'weighTub':
      return [command.batch];
    case 'delivery':
      return [command.cut];
    case 'handOut':
    case 'handIn':
      return [command.hand];
    default:
      return 'task' in command ? [command.task] : [];
  }
}

function lay(view: View, command: Command, hub: View): View {
  switch (command.kind) {
    case 'reading':
      return 'smokers' in view ? layReading(view, command) : view;
    case 'doorOpen':
      return 'smokers' in view ? layDoor(view, command) : view;
    case 'moveSlots':
      return 'smokers' in view ? layMoves(view, command.moves) : view;
    case 'sold':
    case 'soldOut':
    case 'panEmpty':
      return view.face === 'pass' ? layPass(view, command) : view;
    case 'delivery':
      return view.face === 'desk' ? { ...view, pull: layDelivery(view.pull, command) } : view;
    case 'carryOver':
      return view.face === 'desk' ? { ...view, end: layCarried(view.end, command) } : view;
    case 'weighTub':
      return isWork(view) ? { ...view, tasks: layTub(view.tasks, command) } : view;
    case 'check':
    case 'correct':
      return { ...view, checks: layChecked(view.checks, command) };
    case 'handOut':
    case 'handIn':
      return layPeople(view, command);
    default: {
      // What nobody planned moves the day in ways that only the hub can tell.
      if (!('task' in command) || command.kind === 'note') return view;
      if (!isWork(view) || !isWork(hub)) return view;
      const at = view.tasks.findIndex(({ id }) => id === command.task);
      const task = view.tasks[at];
      if (!task) return view;
      const next = layTask(task, command, hub.tasks.find(({ id }) => id === command.task) ?? task);
      if (next === task) return view;
      const tasks = withFollowers(view.tasks.with(at, next), task.id);
      return { ...view, tasks: command.kind === 'giveTo' ? unheld(tasks, task.id) : tasks };
    }
  }
}

/**
 * The hub lets a task begin once all before it has happened; so far as the view's lags tell, so
 * does this.
 */
function withFollowers(tasks: readonly TaskView[], changed: TaskId): readonly TaskView[] {
  const stateOf = stateAmong(tasks);
  return tasks.map((task) => {
    if (!isOpen(task) || isHeld(task)) return task;
    if (!task.after.some((lag) => lag.task === changed)) return task;
    return { ...task, state: stateOf(task) };
  });
}

function stateAmong(tasks: readonly TaskView[]) {
  const states = new Map(tasks.map(({ id, state }) => [id, state]));
  const hasHappened = ({ task, end }: TaskView['after'][number]) => {
    const state = states.get(task) ?? 'done';
    return state === 'done' || (end === 'start' && state === 'running');
  };
  return ({ after }: TaskView) => (after.every(hasHappened) ? 'ready' : 'waiting');
}

/** A smoker that is down, or a hand that is out, holds it whatever else has happened. */
const isHeld = ({ because }: TaskView) => because?.kind === 'down' || because?.kind === 'out';

/** What waited for a hand that is out waits for it no more once it is given to another. */
function unheld(tasks: readonly TaskView[], given: TaskId): readonly TaskView[] {
  const stateOf = stateAmong(tasks);
  return tasks.map((task) => {
    if (task.id !== given || !isOpen(task) || task.because?.kind !== 'out') return task;
    return { ...task, because: null, state: stateOf(task) };
  });
}

type TaskCommand = CommandHead &
  (Exclude<TaskIntent, { kind: 'reading' | 'moveSlots' | 'note' }> | CureIntent);

function layTask(task: TaskView, command: TaskCommand, hub: TaskView): TaskView {
  const at = command.tappedAt;
  switch (command.kind) {
    case 'start':
      return isOpen(task) ? started(task, at, command.personId) : task;
    case 'finish':
      return task.state === 'running' ? { ...task, state: 'done', ...endingAt(at) } : task;
    case 'takeBack':
      return takenBack(task, at, hub);
    case 'count': {
      if (task.state === 'done') return task;
      const running = isOpen(task) ? started(task, at, command.personId) : task;
      return counted(running, command.done, at);
    }
    case 'late':
      return task.state === 'done' ? task : { ...task, ...shifted(task, command.byS * 1000) };
    case 'needHelp':
      return task.state === 'done' ? task : { ...task, helpAskedAt: at };
    case 'helpCame':
      return { ...task, helpAskedAt: null };
    case 'giveTo':
      return { ...task, hand: command.hand };
    case 'weighCure':
      return task.cure ? { ...task, cure: { ...task.cure, weighed: command } } : task;
    default:
      return unreachable(command);
  }
}

const isOpen = ({ state }: TaskView) => state === 'waiting' || state === 'ready';

function started(task: TaskView, at: Instant, by: TaskView['hand']): TaskView {
  const moved = shifted(task, at - task.startAt);
  return { ...task, ...moved, state: 'running', startAt: at, hand: by ?? task.hand, because: null };
}

/**
 * What the hub has not seen started goes back to where the hub has it; else it may start again now.
 */
function takenBack(task: TaskView, at: Instant, hub: TaskView): TaskView {
  if (isOpen(task)) return task;
  const times = isOpen(hub)
    ? { startAt: hub.startAt, ...endsOf(hub), because: hub.because }
    : { startAt: at, ...shifted(task, at - task.startAt), because: null };
  if (task.state === 'done') return { ...task, state: 'running', ...lasting(task, at) };
  return { ...task, state: isOpen(hub) ? hub.state : 'ready', counted: 0, ...times };
}

/** A finish taken back: it goes on, and ends no sooner than now. */
const lasting = (task: TaskView, at: Instant) => endingAt(instant(Math.max(task.endAt, at)));

/**
 * Trusts the pace as far as it has been seen: with a quarter done, a quarter pace and three
 * quarters plan.
 */
function counted(task: TaskView, done: number, at: Instant): TaskView {
  const share = task.pieces > 0 ? Math.min(1, done / task.pieces) : 0;
  if (share === 0 || done < task.counted) return { ...task, counted: done };
  const byPace = task.startAt + (at - task.startAt) / share;
  const moved = shifted(task, Math.round((byPace - task.endAt) * share));
  return { ...task, counted: done, ...moved };
}

const endingAt = (at: Instant) => ({ endAt: at, endLowAt: at, endHighAt: at });

const endsOf = ({ endAt, endLowAt, endHighAt }: TaskView) => ({ endAt, endLowAt, endHighAt });

const shifted = ({ endAt, endLowAt, endHighAt }: TaskView, byMs: number) => ({
  endAt: instant(endAt + byMs),
  endLowAt: instant(endLowAt + byMs),
  endHighAt: instant(endHighAt + byMs),
});
