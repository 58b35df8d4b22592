import type { Cut } from '../catalogue/index.ts';
import type { Kilograms, Seconds, StepId } from '../kernel/index.ts';
import { kilograms, must, seconds } from '../kernel/index.ts';
import { ofDish } from './order.ts';
import type { Donor, OrderedBatch } from './ordered-batch.ts';
import { pathLength, serveStep } from './path.ts';
import type { PlanRefusal } from './refusal.ts';
import { piecesWithin, portionsFrom } from './weights.ts';

/** One tub of one batch, with what nobody has claimed of it. */
type Tub = {
  readonly ordered: OrderedBatch;
  readonly trimmedBy: StepId;
  readonly tub: string;
  /** When the batch must be trimmed if nothing is to wait and nothing to run over. */
  readonly trimmedS: Seconds;
  leftKg: number;
};

/** Keeps an amount that is just enough from being short by a binary fraction. */
const ROUNDING_KG = 1e-6;

/** The trim that a day's batches leave, to be claimed by those that are made of it. */
export class TrimLedger {
  readonly #tubs: readonly Tub[];

  constructor(batches: readonly OrderedBatch[]) {
    this.#tubs = batches.flatMap(tubsOf).sort((a, b) => a.trimmedS - b.trimmedS);
  }

  /**
   * The batches with those that they are made of, the tubs that are there first before others; or,
   * where there is too little, by how much and for how many portions it would do.
   */
  claim(batches: readonly OrderedBatch[]): OrderedBatch[] | PlanRefusal[] {
    const [first] = batches;
    if (first === undefined) return [];
    const { order } = first;
    const tubs = this.#tubs.filter(({ ordered, tub }) => isFrom(order.cut, ordered, tub));
    const hasKg = tubs.reduce((sum, { leftKg }) => sum + leftKg, 0);
    const needKg = batches.reduce((sum, { batch }) => sum + batch.rawKg, 0);
    if (needKg > hasKg + ROUNDING_KG) {
      const pieces = piecesWithin(order.cut, kilograms(hasKg + ROUNDING_KG));
      const portions = portionsFrom(order.cut, order.dish.portionKg, pieces);
      const amounts = { needKg: kilograms(needKg), hasKg: kilograms(hasKg), portions };
      return [{ rule: 'trim-short', ...ofDish(order), cut: order.cut.name, ...amounts }];
    }
    return batches.map((each) => ({ ...each, donors: taken(each, tubs) }));
  }
}

function tubsOf(ordered: OrderedBatch): Tub[] {
  const { order, batch } = ordered;
  const trimming = order.steps.find(({ step }) => step.leaves === 'trimmed')?.step.id;
  if (trimming === undefined) return [];
  const to = { step: serveStep(order.steps).id, end: 'start' } as const;
  const restS = pathLength(order.steps, { from: { step: trimming, end: 'end' }, to }, batch.pieces);
  return order.cut.tubs.map(({ id, share }) => ({
    ordered,
    trimmedBy: trimming,
    tub: id,
    trimmedS: seconds(batch.neededS - must(restS, trimming)),
    leftKg: batch.rawKg * share.typical,
  }));
}

const isFrom = ({ takenFrom = [] }: Cut, { order }: OrderedBatch, tub: string) =>
  takenFrom.some((taken) => taken.cut === order.cut.id && taken.tub === tub);

function taken({ batch, order }: OrderedBatch, tubs: readonly Tub[]): Donor[] {
  const { keepsS } = order.cut;
  const donors: Donor[] = [];
  let openKg: number = batch.rawKg;
  for (const tub of tubs) {
    if (openKg <= ROUNDING_KG) break;
    if (tub.leftKg <= ROUNDING_KG) continue;
    const takenKg: Kilograms = kilograms(Math.min(openKg, tub.leftKg));
    tub.leftKg -= takenKg;
    openKg -= takenKg;
    const donor = { batch: tub.ordered.batch.id, trimmedBy: tub.trimmedBy };
    donors.push(keepsS === undefined ? donor : { ...donor, keepsS });
  }
  return donors;
}
