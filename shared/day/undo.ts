import type { CommandId, TaskId } from '../kernel/index.ts';
import { checkKey } from './check-event.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { Event } from './event.ts';
import { standing } from './happened.ts';
import { heldBy } from './held.ts';
import type { PlanIndex } from './plan-index.ts';
import { personName } from './plan-index.ts';
import type { DayState } from './state.ts';

/**
 * Undoes what a command did, so long as nothing that was done since stands on it. The day is then
 * what its other events make of it.
 */
export function decideUndo(state: DayState, index: PlanIndex, command: CommandId): Decision {
  const events = standing(state.sincePlan);
  const at = events.findLastIndex(({ commandId }) => commandId === command);
  const [done, later] = [events[at], events.slice(at + 1)];
  if (!done) return refuse({ rule: 'nothing-to-undo' });
  if (subjectOf(done) === null) return refuse({ rule: 'undone-on-its-line' });
  const own = events.filter(({ commandId }) => commandId === command);
  const upon = later.find((event) => own.some((each) => standsOn(state, index, event, each)));
  if (!upon) return happen({ kind: 'undone', command });
  const by = personName(index.plan.kitchen, upon.personId);
  return refuse({ rule: 'stood-on', at: upon.at, by });
}

/** What an event is about: the next about the same stands on it. Null: taken back on its line. */
export function subjectOf(event: Event): string | null {
  switch (event.kind) {
    case 'smokerWentDown':
    case 'smokerRunsCold':
    case 'smokerCameUp':
      return `smoker ${event.smoker}`;
    case 'handWentOut':
    case 'handCameIn':
      return `hand ${event.hand}`;
    case 'deliveryCame':
      return `cut ${event.cut}`;
    case 'lotCame':
      return `lot ${event.lot}`;
    case 'batchCutFrom':
      return `cut from ${event.batch}`;
    case 'cureWeighed':
      return `cure ${event.task}`;
    case 'tubWeighed':
      return `tub ${event.batch} ${event.tub}`;
    case 'portionsSold':
      return `sold ${event.service} ${event.dish}`;
    case 'dishSoldOut':
      return `sold out ${event.service} ${event.dish}`;
    case 'panEmptied':
      return `pan ${event.batch}`;
    case 'leftCarriedOver':
      return `carried ${event.batch}`;
    case 'dayClosed':
      return 'day';
    case 'checkRecorded':
    case 'correctionRecorded':
      return `checked ${checkKey(event.on)}`;
    case 'dayMended':
      return 'mended';
    case 'slotsMoved':
      return 'slots';
    case 'taskGiven':
    case 'taskRunsLate':
      return `${event.kind} ${event.task}`;
    default:
      return null;
  }
}

function standsOn(state: DayState, index: PlanIndex, later: Event, done: Event): boolean {
  if (subjectOf(later) !== null && subjectOf(later) === subjectOf(done)) return true;
  switch (done.kind) {
    // A later hand's work on the same task began as it was given, or with the time it was given.
    case 'taskGiven':
    case 'taskRunsLate':
      return isTaskOf(later, done.task);
    case 'cureWeighed':
      return later.kind === 'taskStarted' && later.task === done.task;
    case 'lotCame':
      return later.kind === 'batchCutFrom' && later.lots.includes(done.lot);
    // What was begun, given or moved since is so on the day as it was mended.
    case 'dayMended':
      return done.changes.some(({ activity }) => isUpon(index, later, activity));
    // What was loaded since lies where the move, or the fire, let it.
    case 'slotsMoved':
      return done.moves.some(({ stay }) => isLoading(index, later, stay));
    case 'smokerCameUp':
      return later.kind === 'taskStarted' && heldBy(state, index, done.smoker).has(later.task);
    default:
      return false;
  }
}

/** Whether it was begun, given to somebody or moved, or loaded where it lies. */
function isUpon(index: PlanIndex, later: Event, task: TaskId): boolean {
  switch (later.kind) {
    case 'taskStarted':
      if (later.task === task) return true;
      return index.tasks.get(task)?.work === 'place' && isLoading(index, later, task);
    case 'taskGiven':
      return later.task === task;
    case 'slotsMoved':
      return later.moves.some(({ stay }) => stay === task);
    default:
      return false;
  }
}

const isTaskOf = (event: Event, task: TaskId): boolean =>
  'task' in event && event.task === task && event.kind !== 'noteWritten';

function isLoading(index: PlanIndex, event: Event, stay: TaskId): boolean {
  if (event.kind !== 'taskStarted') return false;
  return index.tasks.get(event.task)?.batch === index.tasks.get(stay)?.batch;
}
