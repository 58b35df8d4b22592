import type { CheckKind, Live } from '../day/index.ts';
import {
  allergensOfDish,
  barsOf,
  emptiedAt,
  keptNow,
  passagesOf,
  soldAt,
  soldOutAt,
  watchedIn,
} from '../day/index.ts';
import type { BatchId, DishId, Instant, ServiceId, StationId, Text } from '../kernel/index.ts';
import { after, must } from '../kernel/index.ts';
import type { Batch, PlannedService, Task } from '../plan/index.ts';
import { viewHead } from './head.ts';
import { readyRange } from './ready-range.ts';
import type { ViewHead } from './view.ts';

/** What the carver sells from: for each dish of the service that is on, or the next. */
export type PassView = ViewHead & {
  readonly face: 'pass';
  /** Null when the last of the day is over. */
  readonly service: PassService | null;
  readonly dishes: readonly PassDish[];
};

export type PassService = Pick<PlannedService, 'id' | 'name' | 'opensAt' | 'closesAt'>;

export type PassDish = {
  readonly dish: DishId;
  readonly name: Text;
  /** What the law asks to be named of it, as the catalogue calls it. */
  readonly allergens: readonly string[];
  /** Portions expected to be asked for in each quarter of an hour from the opening on. */
  readonly perQuarter: readonly number[];
  /** Counted at the pass: in this service, and in those before it today. */
  readonly sold: number;
  readonly soldBefore: number;
  /** Since when nobody is to be promised any. */
  readonly soldOutAt: Instant | null;
  /** Every batch of it that can still be sold from, or will be, by when it is ready. */
  readonly pans: readonly PassPan[];
};

/** What a batch is at the pass: pans of it, or whole pieces to be cut to order. */
export type PassPan = {
  readonly batch: BatchId;
  readonly name: Text;
  readonly service: ServiceId;
  readonly pieces: number;
  readonly piece: Task['piece'];
  readonly portions: number;
  /** `held`: in the cabinet, but still to be cut or set out. */
  readonly stage: 'coming' | 'held' | 'ready';
  /** When it can be sold from: the fact, or as things stand between these two at the likeliest. */
  readonly readyAt: Instant;
  readonly readyLowAt: Instant;
  readonly readyHighAt: Instant;
  /** Null while it is not held yet, and where nothing limits it. */
  readonly heldUntil: Instant | null;
  /** A hand has said that nothing is left of it. */
  readonly isEmptied: boolean;
  /** What keeps it from being sold: a limit that was not kept, or that nobody looked at. */
  readonly barred: { readonly why: 'failed' | 'missed'; readonly check: CheckKind } | null;
};

/** The pass at the live day's now. */
export function passView(live: Live): PassView {
  const { built, catalogue } = live.index.plan;
  const service = serviceAt(built.services, live.now);
  const dishes = (service?.demand ?? []).map(({ dish, portionsPerQuarter }): PassDish => {
    const known = catalogue.dishes.find(({ id }) => id === dish);
    return {
      dish,
      name: must(known, dish).name,
      allergens: allergensOfDish(live.index.plan, dish),
      perQuarter: portionsPerQuarter,
      ...salesOf(live, must(service, 'a service'), dish),
      pans: built.batches
        .filter((batch) => batch.dish === dish)
        .map((batch) => passPan(live, batch))
        .sort((a, b) => a.readyAt - b.readyAt),
    };
  });
  return {
    face: 'pass',
    ...viewHead(live, passStations(live)),
    service: service && onlyTimes(service),
    dishes,
  };
}

/** Where what is sold is cut and set out. */
function passStations({ index }: Live): Set<StationId> {
  const { tasks, problem } = index.plan.built;
  const serving = new Set(problem.goals.map(({ activity }) => activity));
  return new Set(tasks.filter(({ id }) => serving.has(id)).map(({ station }) => station));
}

/** What was counted of a dish at this service, and at those before it. */
function salesOf({ state, index }: Live, { id, opensAt }: PlannedService, dish: DishId) {
  const before = index.plan.built.services.filter((other) => other.opensAt < opensAt);
  return {
    sold: soldAt(state, id, dish),
    soldBefore: before.reduce((sum, { id: other }) => sum + soldAt(state, other, dish), 0),
    soldOutAt: soldOutAt(state, id, dish),
  };
}

/** The first that has not closed. */
function serviceAt(services: readonly PlannedService[], now: Instant): PlannedService | null {
  const open = services.filter(({ closesAt }) => now < closesAt);
  return open.sort((a, b) => a.opensAt - b.opensAt)[0] ?? null;
}

const onlyTimes = ({ id, name, opensAt, closesAt }: PlannedService): PassService => ({
  id,
  name,
  opensAt,
  closesAt,
});

/** A batch as the pass has it. */
export function passPan(live: Live, batch: Batch): PassPan {
  const { state, index, now } = live;
  const { tasks, serve, places } = must(watchedIn(index).get(batch.id), batch.id);
  const { piece } = must(tasks[0], batch.id);
  const { startedAt } = must(passagesOf(state).get(serve), serve);
  const hold = keptNow(state, index, { places, now });
  const bar = barsOf(state, now).get(batch.id);
  const range = readyRange(live, serve);
  return {
    batch: batch.id,
    name: batch.name,
    service: batch.service,
    pieces: batch.pieces,
    piece,
    portions: batch.portions,
    stage: startedAt !== null ? 'ready' : hold ? 'held' : 'coming',
    readyAt: startedAt ?? live.instantOf(range.likelyS),
    readyLowAt: startedAt ?? live.instantOf(range.lowS),
    readyHighAt: startedAt ?? live.instantOf(range.highS),
    heldUntil: hold && after(hold.since, hold.mostS),
    barred: bar ? { why: bar.why, check: bar.check.on.kind } : null,
    isEmptied: emptiedAt(state, batch.id) !== null || state.happened.carried.has(batch.id),
  };
}
