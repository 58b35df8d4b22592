import type { Live } from '../day/index.ts';
import {
  because,
  cureOf,
  currentHand,
  factsOf,
  handsFor,
  holdsOf,
  idleRound,
  limitAt,
  mayStart,
  passagesOf,
  placementOf,
  slotName,
  slotsWorkedAt,
  tubsAfter,
  whyBarred,
} from '../day/index.ts';
import type { PersonId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { comesOffRaw, sideOf } from './came-off-raw.ts';
import type { LagsAmong } from './lags-among.ts';
import type { TaskState, TaskView } from './view.ts';

/** A task as its line on a wall, with the lags to the others that are shown beside it. */
export function taskView(live: Live, id: TaskId, among: LagsAmong): TaskView {
  const { index, state } = live;
  const task = must(index.tasks.get(id), id);
  const batch = must(index.groups.get(task.batch), task.batch);
  const facts = factsOf(state, id);
  const { startS, endS } = live.timesOf(id);
  const { lowS, highS } = live.endRangeOf(id);
  const known = stateOf(live, id);
  const idle = known === 'ready' || known === 'waiting' ? idleRound(live, id) : null;
  return {
    id,
    batch: batch.id,
    batchName: batch.name,
    service: batch.service,
    ...(index.batches.has(batch.id) ? {} : { thing: batch.name }),
    work: task.work,
    title: task.title,
    ...(task.mind && { mind: task.mind }),
    ...(task.caution && { caution: task.caution }),
    ...(task.check && { check: task.check }),
    ...limitOf(live, id),
    ...(task.mix && { mix: { name: task.mix.name, weightKg: task.mix.weightKg } }),
    ...cureIn(live, id),
    ...(index.tubsAfter.has(id) && { tubs: tubsAfter(state, index, id) }),
    cut: index.batches.get(task.batch)?.cut ?? null,
    pieces: task.pieces,
    piece: task.piece,
    ...(task.trayHolds !== undefined && { trayHolds: task.trayHolds }),
    ...(task.byWeight && { byWeight: task.byWeight }),
    weightKg: task.weightKg,
    hand: currentHand(state, index, id),
    shownTo: handsFor(index, id),
    side: sideOf(live, id),
    offRaw: comesOffRaw(live, id),
    ...racksOf(live, id),
    state: idle ? 'waiting' : known,
    plannedStartAt: live.instantOf(placementOf(state, index, id).startS),
    startAt: live.instantOf(startS),
    endAt: live.instantOf(endS),
    endLowAt: live.instantOf(lowS),
    endHighAt: live.instantOf(highS),
    counted: facts.counted?.done ?? 0,
    helpAskedAt: facts.helpAskedAt,
    because: idle ?? because(live, id),
    after: among.into(id),
  };
}

function limitOf(live: Live, id: TaskId): Pick<TaskView, 'limit'> {
  const limit = limitAt(live, id);
  return limit ? { limit } : {};
}

function racksOf({ index, state }: Live, id: TaskId): Pick<TaskView, 'racks'> {
  const slots = slotsWorkedAt(state, index, id);
  if (slots.length === 0) return {};
  return { racks: slots.map((slot) => must(slotName(index.plan.kitchen, slot), slot)) };
}

function cureIn({ index, state }: Live, id: TaskId): Pick<TaskView, 'cure'> {
  const cure = cureOf(index, id);
  if (!cure) return {};
  const { mix, weightKg } = cure;
  const weighed = state.happened.cures.get(id) ?? null;
  const named = (person: PersonId) =>
    index.plan.kitchen.crew.find((each) => each.id === person)?.name ?? person;
  const said = weighed && {
    ...{ weightKg: weighed.weightKg, first: named(weighed.first), second: named(weighed.second) },
  };
  return { cure: { mix, weightKg, weighed: said } };
}

function stateOf(live: Live, id: TaskId): TaskState {
  const passage = must(passagesOf(live.state).get(id), id);
  if (passage.finishedAt !== null) return 'done';
  if (passage.startedAt !== null) return 'running';
  const { closed } = live.state.happened;
  const isBarred = whyBarred(live.state, live.index, { task: id, at: live.now }) !== null;
  const isFree = !closed && !isBarred && !holdsOf(live.state).has(id);
  return isFree && mayStart(live, id) ? 'ready' : 'waiting';
}
