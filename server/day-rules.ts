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
  type ServiceSpread,
} from '../shared/day/index.ts';
import { type DayId, type Instant, instant } from '../shared/kernel/index.ts';
import { type Face, stationsOf, viewOf } from '../shared/view/index.ts';
import type { DayRules, RunningDay, Shown } from './hub/index.ts';
import { type Guard, mayAsk, mayShow, OPEN } from './who/index.ts';

/** The day of a kitchen, as the hub keeps it, behind this guard. */
export const guardedRules = (guard: Guard): DayRules<DayState> => ({
  empty: emptyDay,
  mayShow: (state, asker) => mayShow(state, asker, guard),
  placeOf: ({ who }, screen) => who.screens.get(screen)?.place ?? null,
  mayAsk: (state, asker, command) => mayAsk(state, asker, command, guard),
  personAt: guard.personAt,
  fold,
  decide: (state, command, now, running) => decide(state, command, now, lives.get(running) ?? null),
  changedAt,
  dayOf: (state, fact) => {
    return fact.kind === 'planAdopted' ? (fact.plan.built.day as DayId) : state.day;
  },
  today: ({ day }) => day,
  run: (state, now) => runningDay(openLive(state, now)),
});

/** The same where every screen that can reach the hub is let in. */
export const dayRules = guardedRules(OPEN);

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

/** The live day behind a running one. */
export const liveOf = (running: RunningDay<DayState>): Live | null => lives.get(running) ?? null;

/**
 * What was last worked out beside a running day, whether a screen may have yet to show it, and
 * whether a desk has looked since.
 */
type Beside = { spreads: readonly ServiceSpread[]; isNew: boolean; isLookedFor: boolean };

const besides = new WeakMap<RunningDay<DayState>, Beside>();

function besideOf(running: RunningDay<DayState>): Beside {
  const beside = besides.get(running) ?? { spreads: [], isNew: false, isLookedFor: false };
  besides.set(running, beside);
  return beside;
}

/** The spread of each service, as worked out beside; the desk shows it with its next tick. */
export function tellSpreads(
  running: RunningDay<DayState>,
  spreads: readonly ServiceSpread[],
): void {
  Object.assign(besideOf(running), { spreads, isNew: true, isLookedFor: false });
}

/** Whether any desk was drawn since the last spreads were told. */
export const areSpreadsLookedFor = (running: RunningDay<DayState>): boolean =>
  besideOf(running).isLookedFor;

function runningDay(live: Live): RunningDay<DayState> {
  const running: RunningDay<DayState> = {
    apply: ({ event, state }) => live.apply(event, state),
    tick(now) {
      const beside = besideOf(running);
      const { isNew } = beside;
      beside.isNew = false;
      return live.tick(now) || isNew;
    },
    show(face) {
      const beside = besideOf(running);
      if (face.kind === 'desk') beside.isLookedFor = true;
      return shownOn(live, face, beside.spreads);
    },
    ifMoved: (question) => ifMoved(live, question),
  };
  lives.set(running, live);
  return running;
}

function shownOn(live: Live, face: Face, spreads: readonly ServiceSpread[]): Shown {
  const { plan } = live.state;
  if (!plan) return { ok: false, refusal: { rule: 'no-plan' } };
  const isKnown =
    face.kind !== 'station' ||
    stationsOf(face).every((station) => plan.kitchen.stations.some(({ id }) => id === station));
  return isKnown
    ? { ok: true, view: viewOf(live, face, spreads) }
    : { ok: false, refusal: { rule: 'unknown-place' } };
}
