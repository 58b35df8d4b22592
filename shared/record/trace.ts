import type { BatchId, DayId, DishId, Kilograms, LotId, ServiceId, Text } from '../kernel/index.ts';
import { addDays, kilograms, must } from '../kernel/index.ts';
import type { BatchFlow, DayRecord, LotRow } from './record.ts';

/** Where a lot went. All weights are of that lot alone, and add up to what came. */
export type LotTrace = {
  readonly lot: LotRow;
  readonly batches: readonly (OnDay & {
    readonly batch: BatchId;
    readonly name: Text;
    /** Raw. */
    readonly weightKg: Kilograms;
  })[];
  readonly services: readonly (OnDay & {
    readonly service: ServiceId;
    readonly name: Text;
    readonly dish: DishId;
    readonly dishName: Text;
    readonly weightKg: Kilograms;
  })[];
  /** Trim that no dish of its day was made of. */
  readonly tubs: readonly (OnDay & {
    readonly name: Text;
    readonly goes: string;
    readonly weightKg: Kilograms;
    readonly isWeighed: boolean;
  })[];
  /** Thrown out, with the service that it may have fed where nobody counted what was sold. */
  readonly thrown: readonly (OnDay & {
    readonly dish: DishId;
    readonly dishName: Text;
    readonly weightKg: Kilograms;
    readonly mayHaveFed: readonly MayHaveFed[];
  })[];
  /** Kept for another day, with the services that offered the dish while it may have been there. */
  readonly kept: readonly (OnDay & {
    readonly dish: DishId;
    readonly dishName: Text;
    readonly weightKg: Kilograms;
    readonly mayHaveFed: readonly MayHaveFed[];
  })[];
  /** What trimming, the fire and the knife took. */
  readonly lossKg: Kilograms;
  /** Raw, in the cooler. */
  readonly leftKg: Kilograms;
  /** Raw, to whom it came from. */
  readonly sentBackKg: Kilograms;
};

type OnDay = { readonly day: DayId };
type MayHaveFed = OnDay & { readonly service: ServiceId; readonly name: Text };

/** So much of it is of that lot; null: nobody knows of which. */
export type LotShare = { readonly lot: LotId | null; readonly weightKg: Kilograms };

/**
 * Days that what is kept is good for, the day it was made being the first: 3-501.17 of the US Food
 * Code, read in a secondary copy (Southern Nevada Health District). Where a profile allows fewer,
 * too many services are named, never too few.
 */
const GOOD_FOR_DAYS = 7;

/**
 * Where a lot went, from the records of the days since it came, in their order. Null where none of
 * them knows of it.
 */
export function traceOf(days: readonly DayRecord[], id: LotId): LotTrace | null {
  const lot = days.flatMap(({ lots }) => lots).find((each) => each.id === id);
  if (!lot) return null;
  const parts = days.map((record) => partOf(days, record, id));
  const drawnKg = parts.reduce((sum, part) => sum + part.drawnKg, 0);
  const restKg = kilograms(Math.max(0, lot.weightKg - drawnKg));
  return {
    lot,
    batches: parts.flatMap(({ batches }) => batches),
    services: parts.flatMap(({ services }) => services),
    tubs: parts.flatMap(({ tubs }) => tubs),
    thrown: parts.flatMap(({ thrown }) => thrown),
    kept: parts.flatMap(({ kept }) => kept),
    lossKg: kilograms(parts.reduce((sum, { lossKg }) => sum + lossKg, 0)),
    leftKg: lot.isSentBack ? kilograms(0) : restKg,
    sentBackKg: lot.isSentBack ? restKg : kilograms(0),
  };
}

function partOf(days: readonly DayRecord[], { day, flows, services }: DayRecord, lot: LotId) {
  const shares = sharesOf(flows, lot);
  const touched = flows.flatMap((flow) => {
    const share = shares.get(flow.batch) ?? 0;
    return share > 0 ? [{ flow, of: (kg: number) => kilograms(kg * share) }] : [];
  });
  const nameOf = (id: ServiceId) => services.find((each) => each.id === id)?.name ?? { en: id };
  return {
    drawnKg: flows
      .flatMap(({ from }) => from)
      .reduce((sum, each) => sum + (each.lot === lot ? each.weightKg : 0), 0),
    batches: touched.map(({ flow: { batch, name, inKg }, of }) => ({
      ...{ day, batch, name, weightKg: of(inKg) },
    })),
    services: touched
      .filter(({ flow }) => flow.servedKg > 0)
      .map(({ flow: { service, dish, dishName, servedKg }, of }) => ({
        ...{ day, service, name: nameOf(service), dish, dishName, weightKg: of(servedKg) },
      })),
    tubs: touched.flatMap(({ flow, of }) =>
      flow.tubs.map(({ name, goes, weightKg, isWeighed = false, to }) => {
        const usedKg = to.reduce((sum, each) => sum + each.weightKg, 0);
        return { day, name, goes, weightKg: of(weightKg - usedKg), isWeighed };
      }),
    ),
    thrown: touched
      .filter(({ flow: { thrownKg = 0 } }) => thrownKg > 0)
      .map(({ flow, of }) => ({
        ...{ day, dish: flow.dish, dishName: flow.dishName, weightKg: of(flow.thrownKg ?? 0) },
        mayHaveFed: flow.mayHaveFed
          ? [{ day, service: flow.service, name: nameOf(flow.service) }]
          : [],
      })),
    kept: touched
      .filter(({ flow }) => flow.keptKg > 0)
      .map(({ flow: { dish, dishName, keptKg }, of }) => ({
        ...{ day, dish, dishName, weightKg: of(keptKg) },
        mayHaveFed: mayHaveFed(days, day, dish),
      })),
    lossKg: touched.reduce((sum, { flow: { lossKg }, of }) => {
      return sum + of(lossKg.trim + lossKg.cook + lossKg.carve);
    }, 0),
  };
}

/** Of each batch, the share that is of that lot, through the trim of others too. */
function sharesOf(flows: readonly BatchFlow[], lot: LotId): ReadonlyMap<BatchId, number> {
  const byId = new Map(flows.map((flow) => [flow.batch, flow]));
  const shares = new Map<BatchId, number>();
  const shareOf = (id: BatchId): number => {
    const known = shares.get(id);
    if (known !== undefined) return known;
    const { from, inKg } = must(byId.get(id), id);
    const ofLotKg = from.reduce((sum, source) => {
      const part = source.lot === lot ? 1 : source.of === null ? 0 : shareOf(source.of);
      return sum + source.weightKg * part;
    }, 0);
    const share = inKg > 0 ? ofLotKg / inKg : 0;
    shares.set(id, share);
    return share;
  };
  for (const { batch } of flows) shareOf(batch);
  return shares;
}

function mayHaveFed(days: readonly DayRecord[], madeOn: DayId, dish: DishId) {
  const until = addDays(madeOn, GOOD_FOR_DAYS - 1);
  return days
    .filter(({ day }) => day > madeOn && day <= until)
    .flatMap(({ day, services }) =>
      services
        .filter(({ dishes }) => dishes.some((each) => each.dish === dish))
        .map(({ id, name }) => ({ day, service: id, name })),
    );
}

/** Which lots a batch was made of, raw, through the trim of others too; they add up to it. */
export function lotsOfBatch({ flows }: DayRecord, batch: BatchId): readonly LotShare[] {
  const flow = flows.find((each) => each.batch === batch);
  return flow ? summed(lotsIn(flows, flow)) : [];
}

/** Which lots a service was fed from, by what was for its plates; they add up to that. */
export function lotsOfService({ flows }: DayRecord, service: ServiceId): readonly LotShare[] {
  const fed = flows.filter((flow) => flow.service === service && flow.inKg > 0);
  return summed(
    fed.flatMap((flow) =>
      lotsIn(flows, flow).map(({ lot, weightKg }) => ({
        lot,
        weightKg: kilograms((weightKg * flow.servedKg) / flow.inKg),
      })),
    ),
  );
}

function lotsIn(flows: readonly BatchFlow[], { from }: BatchFlow): readonly LotShare[] {
  return from.flatMap(({ lot, of, weightKg }): readonly LotShare[] => {
    const donor = flows.find(({ batch }) => batch === of);
    if (!donor || donor.inKg <= 0) return [{ lot, weightKg }];
    return summed(lotsIn(flows, donor)).map((each) => ({
      lot: each.lot,
      weightKg: kilograms((weightKg * each.weightKg) / donor.inKg),
    }));
  });
}

function summed(shares: readonly LotShare[]): readonly LotShare[] {
  const sums = new Map<LotId | null, number>();
  for (const { lot, weightKg } of shares) sums.set(lot, (sums.get(lot) ?? 0) + weightKg);
  return [...sums].map(([lot, weightKg]) => ({ lot, weightKg: kilograms(weightKg) }));
}
