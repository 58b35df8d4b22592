import type { Live, ServiceSpread } from '../day/index.ts';
import { currentHand, isDiscarded, passagesOf } from '../day/index.ts';
import type { PersonId, StationId, TaskId } from '../kernel/index.ts';
import { minutes, must, unreachable } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { deskView } from './desk-view.ts';
import { type Face, stationsOf } from './face.ts';
import { viewHead } from './head.ts';
import { LagsAmong } from './lags-among.ts';
import { passView } from './pass-view.ts';
import { smokerDrawing } from './smoker-drawing.ts';
import { taskView } from './task-view.ts';
import type { SmokerView, StationView, TaskView } from './view.ts';
import type { View } from './views.ts';

/** More than a wall can hold, and enough to go on alone for hours; the rest is counted. */
const MOST_TASKS = 24;
/** Done work stays so long, to be taken back. */
const KEPT_DONE_S = minutes(10);

/**
 * The day as this face shows it, at the live day's now. Pure; the same for every screen with that
 * face. `spreads` are worked out beside the day, for they take longer than a tap may.
 */
export function viewOf(live: Live, face: Face, spreads: readonly ServiceSpread[] = []): View {
  switch (face.kind) {
    case 'station':
      return stationView(live, stationsOf(face), face.hand);
    case 'smoker':
      return smokerView(live);
    case 'pass':
      return passView(live);
    case 'desk':
      return deskView(live, spreads);
    default:
      return unreachable(face);
  }
}

function stationView(live: Live, ids: readonly StationId[], own?: PersonId): StationView {
  const { stations: known } = live.index.plan.kitchen;
  const stations = ids.map((id) => {
    const station = known.find((candidate) => candidate.id === id);
    return { id, name: must(station, id).name };
  });
  const isIts = ({ id }: Task) =>
    own === undefined || currentHand(live.state, live.index, id) === own;
  const page = tasksShown(live, (task) => ids.includes(task.station) && isIts(task));
  return { face: 'station', ...viewHead(live, new Set(ids)), stations, ...page };
}

function smokerView(live: Live): SmokerView {
  const pits = new Set(
    live.index.plan.kitchen.stations.filter(({ pit }) => pit).map(({ id }) => id),
  );
  const page = tasksShown(live, (task) => pits.has(task.station));
  return {
    face: 'smoker',
    ...viewHead(live, pits),
    smokers: live.index.plan.kitchen.smokers.map((smoker) => smokerDrawing(live, smoker)),
    ...page,
  };
}

type TaskPage = { readonly tasks: readonly TaskView[]; readonly later: number };

/** The work of hands that this face shows, by start; what was done some time ago is left out. */
function tasksShown(live: Live, belongs: (task: Task) => boolean): TaskPage {
  const passages = passagesOf(live.state);
  const keptFrom = live.now - KEPT_DONE_S * 1000;
  const hasBegun = (id: TaskId) => passages.get(id)?.startedAt != null;
  const open = live.index.plan.built.tasks
    .filter((task) => task.work === 'hands' && belongs(task))
    .filter(({ id }) => (passages.get(id)?.finishedAt ?? live.now) >= keptFrom)
    .filter(({ id, batch }) => hasBegun(id) || !isDiscarded(live.state, batch))
    .map(({ id }) => ({ id, startS: live.timesOf(id).startS }))
    .sort((a, b) => a.startS - b.startS || (a.id < b.id ? -1 : 1));
  const shown = new Set<TaskId>(open.slice(0, MOST_TASKS).map(({ id }) => id));
  const among = new LagsAmong(live, shown);
  return {
    tasks: [...shown].map((id) => taskView(live, id, among)),
    later: open.length - shown.size,
  };
}
