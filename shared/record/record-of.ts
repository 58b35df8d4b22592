import { type DayState, lotsLeft, sentBackIn, soldAt } from '../day/index.ts';
import type { DayId } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';
import { flowsOf } from './flows.ts';
import { personIn } from './person-in.ts';
import { type DayRecord, type LotRow, RECORD_VERSION, type ServiceRow } from './record.ts';

/** The record of a day as its events up to now make it; null before it has a plan. */
export function recordOf(state: DayState): DayRecord | null {
  const { plan, happened } = state;
  if (!plan) return null;
  const { built, kitchen, hashes, version } = plan;
  const { closed } = happened;
  const left = [...lotsLeft(state).values()];
  return {
    version: RECORD_VERSION,
    day: built.day as DayId,
    zone: kitchen.zone,
    ...{ kitchen: kitchen.name, languages: kitchen.languages, units: kitchen.units },
    limits: { id: kitchen.limits, version: plan.limits?.version ?? 0 },
    planVersion: version,
    hashes,
    closed: closed && { at: closed.at, by: personIn(state, closed.by) },
    lots: lotRows(state),
    left: left.map(({ id, leftPieces, pieces, weightKg }) => ({
      lot: id,
      weightKg: kilograms((weightKg * leftPieces) / pieces),
    })),
    services: serviceRows(state),
    flows: flowsOf(state),
  };
}

/** Lots are named by the day on which they came. */
function lotRows(state: DayState): LotRow[] {
  const { plan, happened, day } = state;
  const back = sentBackIn(state);
  const cuts = new Map(plan?.catalogue.cuts.map((cut) => [cut.id, cut]));
  return [...happened.lots.values()]
    .filter(({ id }) => id.startsWith(`${day}-`))
    .map(({ id, cut, pieces, weightKg, supplier, tempC, useBy, code, at, by }) => ({
      ...{ id, cut, name: cuts.get(cut)?.name ?? { en: cut }, pieces, weightKg, supplier },
      ...{ tempC, useBy, code, at, by: personIn(state, by) },
      ...named(cuts.get(cut)?.allergens),
      ...(back.has(id) && { isSentBack: true as const }),
    }));
}

const named = (allergens: readonly string[] = []) => (allergens.length > 0 ? { allergens } : {});

function serviceRows(state: DayState): ServiceRow[] {
  const { built, catalogue } = state.plan ?? {};
  return (built?.services ?? []).map(({ id, name, opensAt, closesAt, demand }) => ({
    ...{ id, name, opensAt, closesAt },
    dishes: demand.map(({ dish }) => ({
      dish,
      name: catalogue?.dishes.find((each) => each.id === dish)?.name ?? { en: dish },
      sold: soldAt(state, id, dish),
    })),
  }));
}
