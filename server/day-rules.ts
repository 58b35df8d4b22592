import {
  type Command,
  type DayState,
  decide,
  emptyDay,
  factsOf,
  fold,
  ifMoved,
  type Live,
  openLive,
  type Refusal,
} from '../shared/day/index.ts';
import { type DayId, type Instant, instant } from '../shared/kernel/index.ts';
import { type Face, viewOf } from '../shared/view/index.ts';
import type { DayRules, RunningDay, Shown } from './hub/index.ts';

/** The day of a kitchen, as the hub keeps it. */
export const dayRules: DayRules<DayState> = {
  empty: emptyDay,
  fold,
  decide: (state, command, now, running) => decide(state, command, now, lives.get(running) ?? null),
  mayAsk,
  changedAt,
  dayOf: (state, fact) => {
    const day = fact.kind === 'planAdopted' ? fact.plan.built.day : state.day;
    return day as DayId;
  },
  run: (state, now) => runningDay(openLive(state, now)),
};

/**
 * A wall asks for the work it shows, and only where the pit is can loads and fires be touched.
 * Whoever stands at a wall does the work of that wall; who they are is another question.
 */
function mayAsk({ plan }: DayState, face: Face, command: Command): Refusal | null {
  // Whoever answers for the whole day may ask for anything.
  if (face.kind === 'desk') return null;
  const stations = plan?.kitchen.stations ?? [];
  const isPit = face.kind === 'smoker' || stations.find(({ id }) => id === face.station)?.pit;
  switch (command.kind) {
    case 'note':
      return null;
    case 'reading':
    case 'moveSlots':
      return isPit ? null : { rule: 'not-this-screens' };
    default: {
      const task = plan?.built.tasks.find(({ id }) => id === command.task);
      // A task that is gone is for the day itself to refuse.
      if (!task) return null;
      const itsStation = stations.find(({ id }) => id === task.station);
      const isHere = face.kind === 'smoker' ? itsStation?.pit : task.station === face.station;
      return isHere ? null : { rule: 'not-this-screens' };
    }
  }
}

/** When the task of a command last changed, but not before the plan begins. */
function changedAt(state: DayState, command: Command): Instant {
  const origin = state.plan?.built.origin ?? instant(0);
  if (!('task' in command) || command.task === null) return origin;
  const { started, finished, counted, helpAskedAt } = factsOf(state, command.task);
  const times = [started?.at, finished?.at, counted?.at, helpAskedAt];
  return instant(Math.max(origin, ...times.map((at) => at ?? 0)));
}

/** The live day behind each running one. */
const lives = new WeakMap<RunningDay<DayState>, Live>();

function runningDay(live: Live): RunningDay<DayState> {
  const running: RunningDay<DayState> = {
    apply: ({ event, state }) => live.apply(event, state),
    tick: (now) => live.tick(now),
    show: (face) => shownOn(live, face),
    ifMoved: (question) => ifMoved(live, question),
  };
  lives.set(running, live);
  return running;
}

function shownOn(live: Live, face: Face): Shown {
  const { plan } = live.state;
  if (!plan) return { ok: false, refusal: { rule: 'no-plan' } };
  const isKnown =
    face.kind !== 'station' || plan.kitchen.stations.some(({ id }) => id === face.station);
  return isKnown
    ? { ok: true, view: viewOf(live, face) }
    : { ok: false, refusal: { rule: 'unknown-place' } };
}
