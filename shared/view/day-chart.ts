import type { Because, Live, PlanIndex } from '../day/index.ts';
import { because, groupBy, ownersOf, passagesOf, placementOf, slotName } from '../day/index.ts';
import type { BatchId, Instant, ServiceId, TaskId, Text } from '../kernel/index.ts';
import { instant, must } from '../kernel/index.ts';
import type { SlotName, Task, Work } from '../plan/index.ts';
import { peopleOf } from './people.ts';
import type { Person, TaskState } from './view.ts';

/** The day on ruled time: a row for each hand and each rack, a bar for each task. */
export type DayChart = {
  readonly from: Instant;
  readonly to: Instant;
  readonly rows: readonly ChartRow[];
  /** By their starts. Waits and stages of a fire have no row: they are there for the reasons. */
  readonly bars: readonly ChartBar[];
  /** Named once, for hundreds of bars: so is what a piece is called. */
  readonly batches: readonly Text[];
  readonly pieces: readonly Task['piece'][];
  readonly chains: readonly ChartChain[];
};

export type ChartRow =
  | { readonly kind: 'hand'; readonly person: Person }
  | { readonly kind: 'rack'; readonly slot: SlotName };

export type ChartBar = {
  readonly id: TaskId;
  /** Places in `rows`. */
  readonly rows: readonly number[];
  readonly work: Work;
  readonly title: Text;
  /** A place in `batches`. */
  readonly batch: number;
  readonly pieces: number;
  /** A place in `pieces`. */
  readonly piece: number;
  readonly state: TaskState;
  /** Where it was planned, if that is a minute or more from where it is. */
  readonly plannedStartAt: Instant | null;
  /** Projected, or the fact once it is one. */
  readonly startAt: Instant;
  readonly endAt: Instant;
  /** Of its own end, or of the stages of the cook in a stay; none where there is no doubt. */
  readonly ranges: readonly ChartRange[];
  /** What its start hangs on; null once it has started. */
  readonly because: Because | null;
};

/** Eight times in ten it ends between `lowAt` (P10) and `highAt` (P90). */
export type ChartRange = {
  readonly lowAt: Instant;
  readonly at: Instant;
  readonly highAt: Instant;
};

/** What decides when a service stands ready: the tasks with least to spare, first thing first. */
export type ChartChain = { readonly service: ServiceId; readonly tasks: readonly TaskId[] };

/** The whole day as its chart. */
export function dayChart(live: Live): DayChart {
  const { index } = live;
  const frame = frameOf(index);
  const bars = index.plan.built.tasks
    .map((task) => chartBar(live, task, frame))
    .sort((a, b) => a.startAt - b.startAt || (a.id < b.id ? -1 : 1));
  return {
    from: instant(Math.min(live.now, ...bars.map(({ startAt }) => startAt))),
    to: instant(Math.max(live.now, ...bars.map(({ endAt }) => endAt))),
    rows: [...peopleOf(live).map((person): ChartRow => ({ kind: 'hand', person })), ...frame.racks],
    bars,
    batches: frame.batches,
    pieces: frame.pieces,
    chains: chainsOf(live),
  };
}

/** What of a chart stays as long as the plan does: hundreds of bars are drawn with every tap. */
type Frame = Pick<DayChart, 'batches' | 'pieces'> & {
  readonly racks: readonly ChartRow[];
  /** Places in `rows`, by who or what has the row. */
  readonly rows: ReadonlyMap<string, number>;
  readonly fixed: ReadonlyMap<TaskId, Pick<ChartBar, 'batch' | 'piece'>>;
  /** The stages of each cook, which have no row. */
  readonly stages: ReadonlyMap<BatchId, readonly Task[]>;
};

const frames = new WeakMap<PlanIndex, Frame>();

function frameOf(index: PlanIndex): Frame {
  const known = frames.get(index);
  if (known) return known;
  const { kitchen, built } = index.plan;
  const racks = kitchen.smokers
    .flatMap(({ racks }) => racks)
    .map(({ slot }) => ({ kind: 'rack' as const, slot: must(slotName(kitchen, slot), slot) }));
  const owners = [...kitchen.crew.map(({ id }) => id), ...racks.map(({ slot }) => slot.id)];
  const batches = placesOf(index.groups.keys());
  const keyOf = ({ piece }: Task) => JSON.stringify(piece);
  const pieces = new Map(built.tasks.map((task) => [keyOf(task), task.piece]));
  const piecePlaces = placesOf(pieces.keys());
  const frame: Frame = {
    racks,
    rows: placesOf<string>(owners),
    batches: [...index.groups.values()].map(({ name }) => name),
    pieces: [...pieces.values()],
    fixed: new Map(
      built.tasks.map((task) => {
        const batch = must(batches.get(task.batch), task.batch);
        return [task.id, { batch, piece: must(piecePlaces.get(keyOf(task)), task.id) }];
      }),
    ),
    stages: groupBy(
      built.tasks.filter(({ work }) => work === 'fire'),
      ({ batch }) => batch,
    ),
  };
  frames.set(index, frame);
  return frame;
}

const placesOf = <Key>(keys: Iterable<Key>): ReadonlyMap<Key, number> =>
  new Map([...keys].map((key, place) => [key, place]));

const MINUTE_S = 60;

function chartBar(live: Live, task: Task, frame: Frame): ChartBar {
  const { state, index } = live;
  const { id } = task;
  const { startS, endS } = live.timesOf(id);
  const plannedS = placementOf(state, index, id).startS;
  const isMoved = Math.abs(startS - plannedS) >= MINUTE_S;
  return {
    id,
    rows: ownersOf(live, id).flatMap((row) => frame.rows.get(row) ?? []),
    work: task.work,
    title: task.title,
    ...must(frame.fixed.get(id), id),
    pieces: task.pieces,
    state: stateOf(live, id),
    plannedStartAt: isMoved ? live.instantOf(plannedS) : null,
    startAt: live.instantOf(startS),
    endAt: live.instantOf(endS),
    ranges: rangesOf(live, task, frame),
    because: because(live, id),
  };
}

function stateOf(live: Live, id: TaskId): TaskState {
  const passage = must(passagesOf(live.state).get(id), id);
  if (passage.finishedAt !== null) return 'done';
  return passage.startedAt === null ? 'waiting' : 'running';
}

/** A stay is as long as the cook inside of it takes, so its doubt is that of the cook's stages. */
function rangesOf(live: Live, task: Task, { stages }: Frame): ChartRange[] {
  if (task.work !== 'place') return rangeOf(live, task.id);
  const { startS, endS } = live.timesOf(task.id);
  return (stages.get(task.batch) ?? [])
    .filter(({ id }) => {
      const stage = live.timesOf(id);
      return stage.startS >= startS && stage.endS <= endS;
    })
    .flatMap(({ id }) => rangeOf(live, id));
}

function rangeOf(live: Live, id: TaskId): ChartRange[] {
  const { lowS, highS } = live.endRangeOf(id);
  if (highS <= lowS) return [];
  return [
    {
      lowAt: live.instantOf(lowS),
      at: live.instantOf(live.timesOf(id).endS),
      highAt: live.instantOf(highS),
    },
  ];
}

/** For each service that still waits, the chain before its batch with least in hand. */
function chainsOf(live: Live): ChartChain[] {
  const { built } = live.index.plan;
  return built.services.flatMap(({ id }): ChartChain[] => {
    const outlook = live.outlookOf(id);
    if (!outlook) return [];
    const tasks = live.timeline.criticalChain(outlook.goal).map(({ activity }) => activity);
    return [{ service: id, tasks: [...new Set(tasks)] }];
  });
}
