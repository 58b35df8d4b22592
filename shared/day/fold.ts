import type { TaskId } from '../kernel/index.ts';
import { assert, kilograms, must, seconds, unreachable } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import { type CheckEntry, type CheckFact, isCheckFact } from './check-event.ts';
import { recordAfter } from './cook-record.ts';
import { lotsLeft } from './draws.ts';
import type { Event, EventHead, ForecastFact, TaskFact } from './event.ts';
import { handTimesAfter } from './hands-record.ts';
import { foldHappening, isHappening, type KeptFood, overNight, standing } from './happened.ts';
import { keptBy } from './kept-food.ts';
import { leftoversAfter } from './leftovers.ts';
import { afterMend } from './mended.ts';
import type { DayState, TaskFacts } from './state.ts';
import { emptyDay, factsOf, loadKey } from './state.ts';
import { toldOf } from './story.ts';
import { foldWho, isWhoFact } from './who.ts';

/**
 * The day after one more event. Pure and total: the same events in the same order give the same
 * day, on the hub, in a replay and in a test.
 */
export function fold(state: DayState, event: Event): DayState {
  assert(event.seq > state.seq, `event ${event.seq} after ${state.seq}`);
  // What was done before there was a day, such as letting the desk in, is told with the first.
  const isSameDay = state.day === null || (event.day ?? state.day) === state.day;
  const told = toldOf(event);
  const before = isSameDay ? state.story : [];
  const head = {
    seq: event.seq,
    day: event.day ?? state.day,
    keptAt: event.keptAt,
    story: told ? [...before, told] : before,
  };
  // Nothing of the day hangs on it, so going through the day again passes it by.
  if (isWhoFact(event)) return { ...state, ...head, who: foldWho(state.who, event, event.at) };
  if (event.kind === 'planAdopted') {
    const atPlan: DayState = { ...happen(state, event), ...head, atPlan: null, sincePlan: [] };
    return { ...atPlan, atPlan };
  }
  const sincePlan = [...state.sincePlan, event];
  if (event.kind === 'forecastAdopted') {
    return { ...state, ...head, forecasts: foreseenAfter(state, event), sincePlan };
  }
  // What the day is held to its plan says; this says why.
  if (event.kind === 'limitsChanged') return { ...state, ...head, sincePlan };
  if (isCheckFact(event)) return { ...checked(state, event), ...head, sincePlan };
  if (event.kind === 'dayMended') {
    return { ...afterMend(state, event), ...head, arrangedSeq: event.seq, sincePlan };
  }
  if (!isHappening(event)) return { ...happen(state, event), ...head, sincePlan };
  if (event.kind === 'undone') {
    const besides = { who: state.who, arrangedSeq: event.seq, atPlan: state.atPlan, sincePlan };
    return { ...undo({ ...state, sincePlan }), ...head, ...besides };
  }
  const happened = foldHappening(state.happened, event);
  return { ...state, ...head, happened, arrangedSeq: arrangedAfter(state, event), sincePlan };
}

/** Of what no longer stands only what was foreseen is kept: how it came is known at the end. */
function foreseenAfter({ forecasts }: DayState, { forecast }: ForecastFact) {
  const before = (forecasts.get(forecast.stay) ?? []).map((each) => ({ ...each, fan: [] }));
  return new Map(forecasts).set(forecast.stay, [...before, forecast]);
}

/** Offers made before a smoker or a hand came or went are out of date. */
const arrangedAfter = (state: DayState, { kind, seq }: Event): number =>
  kind.startsWith('smoker') || kind.startsWith('hand') ? seq : state.arrangedSeq;

/** The day as its other events make it: nothing of what that command did is left. */
function undo(state: DayState): DayState {
  const atPlan = must(state.atPlan, 'a plan before anything is undone');
  return standing(state.sincePlan).reduce(fold, atPlan);
}

function happen(state: DayState, event: TaskFact & EventHead): DayState {
  const deed = { at: event.at, by: event.personId };
  const tapped = { ...deed, screen: event.screenId };
  switch (event.kind) {
    case 'planAdopted': {
      // Another day begins with nothing done: its tasks may well go by the names of yesterday's.
      const next = {
        ...{
          who: state.who,
          happened: overNight(state.happened, lotsLeft(state)),
          record: recordAfter(state),
          handTimes: handTimesAfter(state),
        },
        kept: keptBy(state),
        leftovers: leftoversAfter(state),
      };
      const before = event.day === state.day ? state : { ...emptyDay(), ...next };
      const replaced = event.day === state.day ? replacedAfter(state, event) : [];
      const kitchens = event.day === state.day ? kitchensAfter(state, event.plan) : [];
      const arranged: DayState['arranged'] = new Map();
      const anew = { plan: event.plan, replaced, kitchens, arranged, arrangedSeq: event.seq };
      return { ...before, ...anew };
    }
    case 'taskStarted':
      return withTask(state, event.task, { started: tapped, finished: null, hand: event.hand });
    case 'taskFinished':
      return withTask(state, event.task, { finished: tapped, helpAskedAt: null });
    case 'startTakenBack':
      return withTask(state, event.task, { started: null, counted: null, lateByS: seconds(0) });
    case 'finishTakenBack':
      return withTask(state, event.task, { finished: null });
    case 'piecesCounted':
      return withTask(state, event.task, { counted: { done: event.done, at: event.at } });
    case 'taskRunsLate':
      return withTask(state, event.task, {
        lateByS: seconds(factsOf(state, event.task).lateByS + event.byS),
      });
    case 'helpAsked':
      return withTask(state, event.task, { helpAskedAt: event.at });
    case 'helpCame':
      return withTask(state, event.task, { helpAskedAt: null });
    case 'taskGiven':
      return {
        ...withTask(state, event.task, { hand: event.hand }),
        arrangedSeq: event.seq,
      };
    case 'temperatureRead':
      return {
        ...state,
        readings: [...state.readings, { ...deed, where: event.where, tempC: event.tempC }],
      };
    case 'slotsMoved':
      return {
        ...state,
        arrangedSeq: event.seq,
        slots: new Map([
          ...state.slots,
          ...event.moves.map(({ stay, need, to }) => [loadKey(stay, need), to] as const),
        ]),
      };
    case 'noteWritten':
      return { ...state, notes: [...state.notes, { ...deed, text: event.text, task: event.task }] };
    default:
      return unreachable(event);
  }
}

/** A kitchen's files may change without its plan; then there is nothing more to go back to. */
function replacedAfter(
  { replaced, plan: before }: DayState,
  { plan, takesBack }: Extract<TaskFact, { kind: 'planAdopted' }>,
): DayState['replaced'] {
  if (takesBack !== undefined) return replaced.slice(0, -1);
  if (!before || before.hashes.cookPlan === plan.hashes.cookPlan) return replaced;
  return [...replaced, before.cookPlan];
}

/** What happened to a rack or a hand is told by name after they have left the kitchen, too. */
function kitchensAfter({ kitchens, plan: before }: DayState, plan: AdoptedPlan): Kitchen[] {
  const isSame = !before || before.hashes.kitchen === plan.hashes.kitchen;
  return isSame ? [...kitchens] : [...kitchens, before.kitchen];
}

/** Who throws a batch out leaves nothing of it for the pass. */
function checked(state: DayState, event: CheckFact & EventHead): DayState {
  const { at, personId: by, seq, commandId: command } = event;
  const { kind, on } = event;
  const said: CheckFact =
    kind === 'checkRecorded'
      ? {
          ...{ kind, on, tempC: event.tempC, thermometer: event.thermometer },
          ...(event.feel ? { feel: event.feel } : {}),
        }
      : { kind, on, action: event.action };
  const entry: CheckEntry = { ...said, at, by, seq, command };
  const next = { ...state, checks: [...state.checks, entry] };
  if (kind !== 'correctionRecorded' || event.action !== 'discard' || !('batch' in on)) return next;
  const before = state.leftovers.find(({ batch }) => batch === on.batch);
  if (before) {
    const { day, dish, from } = before;
    const isIt = (food: KeptFood) => food.day === day && food.dish === dish && food.at === from;
    return { ...next, kept: state.kept.filter((food) => !isIt(food)) };
  }
  const emptied = new Map(state.happened.emptied).set(on.batch, { at, by });
  const { carried: was } = state.happened;
  const carried = was.has(on.batch) ? new Map(was).set(on.batch, kilograms(0)) : was;
  return { ...next, happened: { ...state.happened, emptied, carried } };
}

function withTask(state: DayState, task: TaskId, change: Partial<TaskFacts>): DayState {
  const tasks = new Map(state.tasks);
  tasks.set(task, { ...factsOf(state, task), ...change });
  return { ...state, tasks };
}
