import type { BatchId } from '../kernel/index.ts';
import { after, seconds, textOf } from '../kernel/index.ts';
import type { Batch } from './built.ts';
import { QUARTER_S } from './demand.ts';
import { dishKey, type Keeping, numberOf } from './keeping-batches.ts';
import { fitsOf } from './lacks.ts';
import { laidCount } from './laid.ts';
import { longestSale, obstacles } from './obstacles.ts';
import { type Frame, type Order, ofDish } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { chainLength, serveStep } from './path.ts';
import { holdsLoads, rackLoads } from './rack-fit.ts';
import type { PlanRefusal } from './refusal.ts';
import { evenShares, keptShare, namedShares, type Share } from './shares.ts';
import { piecesFor, portionsFrom, weightsOf } from './weights.ts';

/** More would be a slip of the finger. */
const MOST_PIECES = 500;

/**
 * The batches of an order, staggered over its service, or why there can be none. Those that are
 * kept stay as they are.
 */
export function batchesOf(
  order: Order,
  frame: Frame,
  { batches: kept, unchanged }: Keeping,
): OrderedBatch[] | PlanRefusal[] {
  const refusals = obstacles(order, frame, 1);
  if (refusals.length > 0) return refusals;
  const { cut, dish } = order;
  const serve = serveStep(order.steps).id;
  const mostPieces = largestBatch(order, frame);
  const limits = {
    piecesFor: (portions: number) => piecesFor(cut, dish.portionKg, portions),
    mostPieces,
    mostQuarters: (pieces: number) => Math.floor(longestSale(order, serve, pieces) / QUARTER_S),
  };
  const key = dishKey(order.service.id, dish.id);
  const its = kept.filter(({ batch }) => dishKey(batch.service, batch.dish) === key);
  const sharesOf = order.readyAt.length > 0 ? namedShares : evenShares;
  const shares = unchanged.has(key) ? its.map(keptShare) : sharesOf(order, limits, its);
  const known = new Set(its.map(({ batch }) => numberOf(batch.id)));
  const fresh = shares.filter(({ number }) => !known.has(number));
  const tooLarge = fresh.find(({ pieces }) => pieces > mostPieces);
  if (tooLarge) return [tooManyPieces(order, tooLarge, mostPieces)];
  const batches = shares.map((share) => orderedBatch(order, share, shares.length > 1));
  const ids = new Set(fresh.map((share) => idOf(order, share)));
  const tooEarly = batches
    .filter(({ batch }) => ids.has(batch.id))
    .flatMap(({ batch }) => earliness(order, frame, batch));
  return tooEarly.length > 0 ? tooEarly.slice(0, 1) : batches;
}

function tooManyPieces(order: Order, { number, pieces }: Share, most: number): PlanRefusal {
  const { cut, dish } = order;
  const portions = portionsFrom(cut, dish.portionKg, most);
  return { rule: 'batch-too-large', ...ofDish(order), number, pieces, most, portions };
}

/** Narrows the answer of `batchesOf`. */
export function isRefused(answer: OrderedBatch[] | PlanRefusal[]): answer is PlanRefusal[] {
  const [first] = answer;
  return first !== undefined && 'rule' in first;
}

/**
 * As many pieces as one smoker holds and one shift, one limit, one cabinet bears. What so many
 * pieces keep to, fewer keep to as well: so sizes are doubled until one is too large, and the last
 * that is not is found between the two.
 */
function largestBatch(order: Order, frame: Frame): number {
  const fits = (pieces: number) => isWorkable(order, frame, pieces);
  let most = 1;
  let tooMany = 2;
  while (tooMany <= MOST_PIECES && fits(tooMany)) [most, tooMany] = [tooMany, 2 * tooMany];
  tooMany = Math.min(tooMany, MOST_PIECES + 1);
  while (tooMany - most > 1) {
    const middle = Math.floor((most + tooMany) / 2);
    if (fits(middle)) most = middle;
    else tooMany = middle;
  }
  return most;
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

const idOf = ({ service, dish }: Order, { number }: Share) =>
  [service.id, dish.id, number].join('-') as BatchId;

function orderedBatch(order: Order, share: Share, oneOfSeveral: boolean): OrderedBatch {
  const { cut, dish, service, route } = order;
  const { number, pieces, neededS, saleS } = share;
  const name = textOf([dish.name, service.name], ([what, when]) =>
    oneOfSeveral || number > 1 ? `${what} · ${when} ${number}` : `${what} · ${when}`,
  );
  const batch: Batch = {
    id: idOf(order, share),
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
  return { order, batch, saleS, donors: [] };
}

function earliness(order: Order, { origin }: Frame, { beginByS, neededS }: Batch): PlanRefusal[] {
  if (beginByS >= 0) return [];
  const needS = seconds(neededS - beginByS);
  const { opens, opensS } = order.service;
  const lateS = needS - neededS;
  const canOpenAt = after(origin, seconds(opensS + Math.ceil(lateS / QUARTER_S) * QUARTER_S));
  return [{ rule: 'service-too-early', ...ofDish(order), opens, needS, hasS: neededS, canOpenAt }];
}
