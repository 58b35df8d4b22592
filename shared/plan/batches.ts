import type { BatchId } from '../kernel/index.ts';
import { after, seconds, textOf } from '../kernel/index.ts';
import type { Batch } from './built.ts';
import { QUARTER_S } from './demand.ts';
import { fitsOf } from './lacks.ts';
import { laidCount } from './laid.ts';
import { longestSale, obstacles } from './obstacles.ts';
import { type Frame, type Order, ofDish } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { chainLength, serveStep } from './path.ts';
import { holdsLoads, rackLoads } from './rack-fit.ts';
import type { PlanRefusal } from './refusal.ts';
import { type Stretch, splitService } from './split.ts';
import { piecesFor, portionsFrom, weightsOf } from './weights.ts';

/** More would be a slip of the finger. */
const MOST_PIECES = 500;

/** The batches of an order, staggered over its service, or why there can be none. */
export function batchesOf(order: Order, frame: Frame): OrderedBatch[] | PlanRefusal[] {
  const refusals = obstacles(order, frame, 1);
  if (refusals.length > 0) return refusals;
  const { cut, dish } = order;
  const serve = serveStep(order.steps).id;
  const stretches = splitService(order.demand, {
    piecesFor: (portions) => piecesFor(cut, dish.portionKg, portions),
    mostPieces: largestBatch(order, frame),
    mostQuarters: (pieces) => Math.floor(longestSale(order, serve, pieces) / QUARTER_S),
  });
  const batches = stretches.map((stretch, index) =>
    orderedBatch(order, stretch, stretches.length > 1 ? index + 1 : null),
  );
  const tooEarly = batches.flatMap(({ batch }) => earliness(order, frame, batch));
  return tooEarly.length > 0 ? tooEarly.slice(0, 1) : batches;
}

/** Narrows the answer of `batchesOf`. */
export function isRefused(answer: OrderedBatch[] | PlanRefusal[]): answer is PlanRefusal[] {
  const [first] = answer;
  return first !== undefined && 'rule' in first;
}

/** As many pieces as one smoker holds and one shift, one limit, one cabinet bears. */
function largestBatch(order: Order, frame: Frame): number {
  let pieces = 1;
  while (pieces < MOST_PIECES && isWorkable(order, frame, pieces + 1)) pieces++;
  return pieces;
}

function isWorkable(order: Order, frame: Frame, pieces: number): boolean {
  const stays = order.steps.flatMap(({ step }) => (step.work === 'place' ? [step] : []));
  const lie = stays.every((stay) => {
    const fits = fitsOf(order, frame, stay);
    const loads = rackLoads(fits, laidCount(order, stay, pieces));
    return fits.some((fit) => holdsLoads(fit, loads));
  });
  return lie && obstacles(order, frame, pieces).length === 0;
}

function orderedBatch(order: Order, stretch: Stretch, number: number | null): OrderedBatch {
  const { cut, dish, service, route } = order;
  const { pieces, fromQuarter, toQuarter } = stretch;
  const name = textOf([dish.name, service.name], ([what, when]) =>
    number === null ? `${what} · ${when}` : `${what} · ${when} ${number}`,
  );
  const neededS = seconds(service.opensS + fromQuarter * QUARTER_S);
  const batch: Batch = {
    id: [service.id, dish.id, number ?? 1].join('-') as BatchId,
    name,
    service: service.id,
    dish: dish.id,
    cut: cut.id,
    bought: cut.takenFrom ? null : (cut.boughtAs ?? cut.id),
    route: route.id,
    pieces,
    ...weightsOf(cut, pieces),
    portions: portionsFrom(cut, dish.portionKg, pieces),
    beginByS: seconds(neededS - chainLength(order.steps, pieces)),
    neededS,
  };
  return { order, batch, saleS: seconds((toQuarter - fromQuarter) * QUARTER_S), donors: [] };
}

function earliness(order: Order, { origin }: Frame, { beginByS, neededS }: Batch): PlanRefusal[] {
  if (beginByS >= 0) return [];
  const needS = seconds(neededS - beginByS);
  const { opens, opensS } = order.service;
  const lateS = needS - neededS;
  const canOpenAt = after(origin, seconds(opensS + Math.ceil(lateS / QUARTER_S) * QUARTER_S));
  return [{ rule: 'service-too-early', ...ofDish(order), opens, needS, hasS: neededS, canOpenAt }];
}
