import type { ChosenStep, StepOf } from '../catalogue/index.ts';
import { chosenLimits } from '../catalogue/index.ts';
import type { Seconds, Span, StepId, TaskId } from '../kernel/index.ts';
import { must, overlaps, seconds } from '../kernel/index.ts';
import type { Smoker } from '../kitchen/index.ts';
import type { Clash, ResourceId } from '../schedule/index.ts';
import { fitsOf } from './lacks.ts';
import { isCooked } from './lethality.ts';
import type { FoodKind, LimitRow } from './limits.ts';
import type { Frame } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { longestPath, pathBetween, pathLength, serveStep, shortestPath } from './path.ts';
import { fireState, resourceId } from './resources.ts';
import { stayLoads } from './stays.ts';

/** One rack load with what it is to the loads above and below it. */
type Lying = {
  readonly id: TaskId;
  readonly batch: string;
  readonly kind: FoodKind;
  /** Past its lethality step from the first of these on, if no hand is late, else by the second. */
  readonly cookedFromS: Seconds;
  readonly cookedByS: Seconds;
  /** When it can be in a smoker at all. */
  readonly window: Span;
  /** By smoker, the fires that it can lie at. */
  readonly fires: ReadonlyMap<Smoker, ReadonlySet<string>>;
};

/**
 * What may not lie above what, while both are in one smoker: the rows of the profile that speak of
 * dripping, as pairs of racks. A load counts as cooked from when its lethality step may be past,
 * and as raw until it must be, however late the hands. Plants drip nothing raw.
 */
export function clashesOf(batches: readonly OrderedBatch[], frame: Frame): Clashes {
  const lying = batches.flatMap((ordered) => lyingOf(ordered, frame));
  const found = lying.flatMap((upper) =>
    lying.flatMap((lower) => {
      if (upper.kind === 'plant' || upper.batch === lower.batch) return [];
      if (!overlaps(upper.window, lower.window)) return [];
      const places = placesAbove(upper, lower);
      return places.length === 0 ? [] : clashesBetween(upper, lower, places, frame);
    }),
  );
  return {
    clashes: found.map(({ clash }) => clash),
    rows: [...new Map(found.map(({ row }) => [row.id, row])).values()],
  };
}

type Clashes = { readonly clashes: readonly Clash[]; readonly rows: readonly LimitRow[] };

function clashesBetween(
  upper: Lying,
  lower: Lying,
  places: Clash['places'],
  { limits }: Frame,
): { readonly clash: Clash; readonly row: LimitRow }[] {
  const raw = { kind: upper.kind, raw: true };
  const wholly = limits.above(raw, { kind: lower.kind, raw: true });
  const onCooked = wholly ?? limits.above(raw, { kind: lower.kind, raw: false });
  if (onCooked === null) return [];
  const { row } = onCooked;
  const clash: Clash = {
    upper: { activity: upper.id, part: { fromS: seconds(0), toS: upper.cookedByS } },
    lower: { activity: lower.id, part: { fromS: wholly ? seconds(0) : lower.cookedFromS } },
    places,
    reason: row.id,
  };
  return [{ clash, row }];
}

/** The pairs of racks in which the one would lie above the other. */
function placesAbove(upper: Lying, lower: Lying): [ResourceId, ResourceId][] {
  return [...upper.fires].flatMap(([smoker, fires]) => {
    const others = lower.fires.get(smoker);
    const meet = others && [...fires].some((fire) => others.has(fire));
    return meet ? racksAbove(smoker) : [];
  });
}

/** Racks that go round are each above each at some time; in a long pit none is above another. */
function racksAbove({ racks, layout }: Smoker): [ResourceId, ResourceId][] {
  if (layout === 'long') return [];
  const slots = racks.map(({ slot }) => resourceId({ kind: 'slot', slot }));
  return slots.flatMap((up, index) =>
    (layout === 'turning' ? slots : slots.slice(index + 1)).map((low): [ResourceId, ResourceId] => [
      up,
      low,
    ]),
  );
}

function lyingOf(ordered: OrderedBatch, frame: Frame): Lying[] {
  const { order } = ordered;
  return order.steps.flatMap(({ step }) =>
    step.work === 'place' ? lyingIn(step, ordered, frame) : [],
  );
}

function lyingIn(stay: StepOf<'place'>, ordered: OrderedBatch, frame: Frame): Lying[] {
  const { order, batch } = ordered;
  const from = stay.spans.from.step;
  const cooked = cookedWithin(stay, ordered, frame);
  const fires = new Map<Smoker, Set<string>>();
  for (const { smoker, fireC } of fitsOf(order, frame, stay)) {
    fires.set(smoker, (fires.get(smoker) ?? new Set()).add(fireState(fireC)));
  }
  return stayLoads(ordered, stay, frame).map(({ id }) => ({
    id,
    batch: batch.id,
    kind: must(order.kinds.get(from), from),
    ...cooked,
    window: windowOf(stay, ordered),
    fires,
  }));
}

/**
 * How long after the start of a stay its load is past its lethality step, at the least and at the
 * most.
 */
function cookedWithin(
  { spans }: StepOf<'place'>,
  { order, batch }: OrderedBatch,
  frame: Frame,
): Pick<Lying, 'cookedFromS' | 'cookedByS'> {
  const lethal = order.steps.find(({ step }) => isCooked(step, order, frame))?.step.id;
  if (lethal === undefined) return { cookedFromS: frame.horizonS, cookedByS: frame.horizonS };
  const between = { from: spans.from, to: { step: lethal, end: 'end' } } as const;
  const cookedFromS = pathLength(order.steps, between, batch.pieces);
  if (cookedFromS === undefined) return { cookedFromS: NONE_S, cookedByS: NONE_S };
  const gapsS = gapsWithin(order, order.steps, { from: spans.from.step, to: lethal });
  return { cookedFromS, cookedByS: seconds(cookedFromS + gapsS) };
}

/** Cooked in an earlier stay. */
const NONE_S = seconds(0);

/** The most that hands may be late to what lies between two steps. */
function gapsWithin(
  { route, chosen }: OrderedBatch['order'],
  steps: readonly ChosenStep[],
  { from, to }: { readonly from: StepId; readonly to: StepId },
): number {
  const places = steps.map(({ step }) => step.id);
  const isBetween = (id: StepId) =>
    places.indexOf(from) <= places.indexOf(id) && places.indexOf(id) <= places.indexOf(to);
  return chosenLimits(route, chosen)
    .filter((limit) => limit.from.end === 'end' && limit.to.end === 'start')
    .filter((limit) => isBetween(limit.from.step) && isBetween(limit.to.step))
    .reduce((sum, { atMostS }) => sum + atMostS, 0);
}

function windowOf({ spans }: StepOf<'place'>, { order, batch }: OrderedBatch): Span {
  const serve = { step: serveStep(order.steps).id, end: 'start' } as const;
  const length = (from: typeof spans.from, measure: ReturnType<typeof longestPath>) =>
    pathBetween(order.steps, { from, to: serve }, measure) ?? 0;
  const start = batch.neededS - length(spans.from, longestPath(batch.pieces)) - SPARE_S;
  const end = batch.neededS - length(spans.to, shortestPath(batch.pieces));
  return { start: seconds(start), end: seconds(end) };
}

/** A plan may draw times out beyond what any step takes: hands come late. */
const SPARE_S = 6 * 3600;
