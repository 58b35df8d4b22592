import type { Instant, PersonId } from '../kernel/index.ts';
import { hours, must, unreachable } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { currentHand, handsFor } from './arrangement.ts';
import { whyBarred } from './barred.ts';
import type { Command, TaskIntent } from './command.ts';
import { whyNotCured } from './cure.ts';
import { decideCheck } from './decide-check.ts';
import { decideHappening, whyAbsent } from './decide-happening.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { Deed } from './deed.ts';
import { dripsAtLoad } from './drips.ts';
import type { Fact } from './event.ts';
import { spellOf } from './happened-to.ts';
import { holdsOf } from './held.ts';
import type { Live } from './live.ts';
import { openLive } from './live.ts';
import { decideMove } from './moves.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf, personName, smokerName, taskName } from './plan-index.ts';
import { decideReading } from './readings.ts';
import { begunAfter, undoneBefore } from './ready.ts';
import type { DoneBefore } from './refusal.ts';
import type { DayState } from './state.ts';
import { factsOf } from './state.ts';

/** A hand that says it runs later than this means something else. */
const MOST_LATE_S = hours(12);

/**
 * What a command makes happen, or why it does not. Pure: the answer depends on the day and the
 * command alone; `now` is the hub's clock when it decides, for what may not lie in the future.
 * Where the day is running, `running` spares opening it anew from its state.
 */
export function decide(
  state: DayState,
  command: Command,
  now: Instant,
  running: Live | null = null,
): Decision {
  if (!state.plan) return refuse({ rule: 'no-plan' });
  const index = indexOf(state.plan);
  const { closed } = state.happened;
  // What cools over night is looked at after the closing, too.
  const isAfter = command.kind === 'undo' || command.kind === 'check' || command.kind === 'correct';
  if (closed && !isAfter) {
    const by = personName(index.plan.kitchen, closed.by);
    return refuse({ rule: 'day-is-closed', at: closed.at, by });
  }
  switch (command.kind) {
    case 'reading':
      return decideReading(index, command);
    case 'moveSlots':
      return decideMove(state, index, command, () =>
        running?.state.seq === state.seq ? running : openLive(state, now),
      );
    case 'note':
      return decideNote(index, command);
    case 'check':
    case 'correct':
      return decideCheck(state, index, command);
    case 'start':
    case 'finish':
    case 'takeBack':
    case 'count':
    case 'late':
    case 'needHelp':
    case 'helpCame':
    case 'giveTo': {
      const task = index.tasks.get(command.task);
      if (!task) return refuse({ rule: 'unknown-task' });
      return decideTask({ state, index, task, command });
    }
    default:
      return decideHappening({ state, index, command });
  }
}

type NotOfTask = 'reading' | 'moveSlots' | 'note';
type TaskCommand = Extract<Command, { kind: Exclude<TaskIntent['kind'], NotOfTask> }>;
type Asked<C extends TaskCommand = TaskCommand> = {
  readonly state: DayState;
  readonly index: PlanIndex;
  readonly task: Task;
  readonly command: C;
};
type AskedFor<K extends TaskCommand['kind']> = Asked<Extract<TaskCommand, { kind: K }>>;

function decideTask(asked: Asked): Decision {
  const { command } = asked;
  const task = asked.task.id;
  switch (command.kind) {
    case 'start':
      return decideStart({ ...asked, command });
    case 'finish':
      return decideFinish(asked);
    case 'takeBack':
      return decideTakeBack(asked);
    case 'count':
      return decideCount({ ...asked, command });
    case 'late':
      return decideLate({ ...asked, command });
    case 'needHelp':
      return refuseIfDone(asked) ?? happen({ kind: 'helpAsked', task });
    case 'helpCame':
      return refuseIfDone(asked) ?? happen({ kind: 'helpCame', task });
    case 'giveTo':
      return decideGiveTo({ ...asked, command });
    default:
      return unreachable(command);
  }
}

function decideStart(asked: AskedFor<'start'>): Decision {
  const { state, index, task, command } = asked;
  const { started } = factsOf(state, task.id);
  const refused = refuseIfNotByHand(asked) ?? refuseIfDone(asked) ?? refuseIfWaiting(asked);
  if (refused) return refused;
  if (started) {
    return refuse({ rule: 'already-started', ...doneBefore(asked, started) });
  }
  const hand = command.personId ?? currentHand(state, index, task.id);
  const held = whyHeld(asked, hand) ?? refuseIfBarred(asked);
  const kept = held ?? whyNotCured(state, index, task.id);
  return kept ?? happen({ kind: 'taskStarted', task: task.id, hand });
}

function decideFinish(asked: Asked): Decision {
  const { state, task } = asked;
  const refused = refuseIfNotByHand(asked) ?? refuseIfDone(asked);
  if (refused) return refused;
  if (!factsOf(state, task.id).started) return refuse({ rule: 'not-started' });
  return happen({ kind: 'taskFinished', task: task.id });
}

function decideTakeBack(asked: Asked): Decision {
  const { state, index, task } = asked;
  const { started, finished } = factsOf(state, task.id);
  if (!started) return refuse({ rule: 'not-started' });
  if (!finished) return happen({ kind: 'startTakenBack', task: task.id });
  const follower = begunAfter(state, task.id);
  if (follower) return refuse({ rule: 'already-followed', by: taskName(index, follower) });
  return happen({ kind: 'finishTakenBack', task: task.id });
}

/** A count also starts the work that nobody tapped: wet hands count the tray they finished. */
function decideCount(asked: AskedFor<'count'>): Decision {
  const { state, index, task, command } = asked;
  const { pieces } = task;
  const refused = refuseIfNotByHand(asked) ?? refuseIfDone(asked);
  if (refused) return refused;
  if (command.done < 0 || command.done > pieces) {
    return refuse({ rule: 'count-out-of-range', done: command.done, pieces });
  }
  const counted: Fact = { kind: 'piecesCounted', task: task.id, done: command.done };
  if (factsOf(state, task.id).started) return happen(counted);
  const waiting = refuseIfWaiting(asked);
  if (waiting) return waiting;
  const hand = command.personId ?? currentHand(state, index, task.id);
  const held = whyHeld(asked, hand) ?? refuseIfBarred(asked);
  const kept = held ?? whyNotCured(state, index, task.id);
  return kept ?? happen({ kind: 'taskStarted', task: task.id, hand }, counted);
}

function decideLate(asked: AskedFor<'late'>): Decision {
  const { task, command } = asked;
  const refused = refuseIfDone(asked);
  if (refused) return refused;
  if (command.byS <= 0 || command.byS > MOST_LATE_S) {
    return refuse({ rule: 'late-out-of-range', byS: command.byS, mostS: MOST_LATE_S });
  }
  return happen({ kind: 'taskRunsLate', task: task.id, byS: command.byS });
}

function decideGiveTo(asked: AskedFor<'giveTo'>): Decision {
  const { state, index, task, command } = asked;
  const refused = refuseIfNotByHand(asked) ?? refuseIfDone(asked);
  if (refused) return refused;
  const person = personName(index.plan.kitchen, command.hand);
  if (!person) return refuse({ rule: 'unknown-person' });
  if (!handsFor(index, task.id).includes(command.hand)) {
    return refuse({ rule: 'lacks-skill', person, task: taskName(index, task.id) });
  }
  const absent = whyAbsent(state, index, command.hand);
  return absent ?? happen({ kind: 'taskGiven', task: task.id, hand: command.hand });
}

function decideNote(index: PlanIndex, command: Extract<Command, { kind: 'note' }>): Decision {
  if (command.task !== null && !index.tasks.has(command.task)) {
    return refuse({ rule: 'unknown-task' });
  }
  return happen({ kind: 'noteWritten', text: command.text, task: command.task });
}

/** Nothing goes into a smoker that is down, and nobody who is out begins anything. */
function whyHeld({ state, index, task }: Asked, hand: PersonId | null): Decision | null {
  const hold = holdsOf(state).get(task.id);
  if (hold?.kind !== 'smoker') return whyAbsent(state, index, hand);
  const smoker = must(smokerName(index.plan.kitchen, hold.smoker), hold.smoker);
  const { from } = must(spellOf(state, hold.smoker), hold.smoker);
  return refuse({ rule: 'smoker-is-down', smoker, since: from });
}

function refuseIfNotByHand({ index, task }: Asked): Decision | null {
  if (task.work === 'hands') return null;
  return refuse({ rule: 'not-by-hand', task: taskName(index, task.id) });
}

function refuseIfDone(asked: Asked): Decision | null {
  const { state, task } = asked;
  const finished = passagesOf(state).get(task.id)?.finishedAt ?? null;
  if (finished === null) return null;
  const deed = factsOf(state, task.id).finished ?? { at: finished, by: null };
  return refuse({ rule: 'already-done', ...doneBefore(asked, deed), at: finished });
}

/** Who was first, for whoever comes second and could not know. */
function doneBefore({ state, index }: Asked, { at, by, screen }: Deed): DoneBefore {
  const on = screen ? state.who.screens.get(screen)?.name : undefined;
  return { at, by: personName(index.plan.kitchen, by), ...(on !== undefined && { on }) };
}

/** Food that a limit was not kept with goes no further, and nothing where it would drip. */
function refuseIfBarred({ state, index, task, command }: Asked): Decision | null {
  const asked = { task: task.id, at: command.tappedAt };
  const barred = whyBarred(state, index, asked) ?? dripsAtLoad(state, index, asked);
  return barred && refuse(barred);
}

function refuseIfWaiting({ state, index, task }: Asked): Decision | null {
  const before = undoneBefore(state, task.id);
  return before ? refuse({ rule: 'waits-for', before: taskName(index, before) }) : null;
}
