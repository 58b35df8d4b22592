import { factsOf, type Live } from '../../shared/day/index.ts';
import type { Task } from '../../shared/plan/index.ts';
import { activityJson, moment, servicesJson } from './json.ts';
import { doneBy, toldBy } from './told.ts';

/** The day as its log tells it, as of its last entry. */
export function replayJson(live: Live) {
  const { state, index } = live;
  const { zone, day } = index.plan.built;
  const { done, running, next } = toldBy(live);
  return {
    day,
    zone,
    plan: { version: index.plan.version, engine: index.plan.engine, hashes: index.plan.hashes },
    ...moment('asOf', live.now, zone),
    done: done.map((task) => deedJson(live, task)),
    running: running.map((task) => deedJson(live, task)),
    next: next.map((task) => activityJson(live, task)),
    readings: state.readings.map(({ at, by, where, tempC }) => ({
      ...moment('at', at, zone),
      by,
      where,
      tempC,
    })),
    notes: state.notes.map(({ at, by, text, task }) => ({
      ...moment('at', at, zone),
      by,
      text,
      task,
    })),
    screens: [...state.who.screens.values()].map(({ id, name, place, pairedAt, revokedAt }) => ({
      id,
      name,
      ...place,
      ...moment('letIn', pairedAt, zone),
      isIn: revokedAt === null,
    })),
    services: servicesJson(live),
  };
}

function deedJson(live: Live, task: Task) {
  const { counted, lateByS } = factsOf(live.state, task.id);
  return {
    ...activityJson(live, task),
    by: doneBy(live, task),
    counted: counted?.done ?? null,
    lateByMin: Math.round(lateByS / 60),
  };
}
