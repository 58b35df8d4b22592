import type { Instant, Kilograms, LocalDay, LotId, Text } from '../kernel/index.ts';
import type { BatchFlow, DayRecord, LotRow, Signed } from './record.ts';
import { lotsOfBatch } from './trace.ts';

/** A label: on a case, on the trays of a batch, on its pans, on what is kept of it. */
export type Label = {
  readonly on: 'case' | 'tray' | 'pan' | 'kept';
  /** The lot, or the batch. */
  readonly id: string;
  readonly name: Text;
  /** What it is for; null for a case and for what is kept. */
  readonly service: Text | null;
  /** Of which lots it is, that of which it is most first. */
  readonly lots: readonly LotId[];
  readonly allergens: readonly string[];
  readonly pieces: number | null;
  readonly weightKg: Kilograms | null;
  /** When it came, was begun, stood there, was kept, and who did it. */
  readonly since: Signed;
  readonly useBy: LocalDay | null;
  /** Of pans: till when they may be held. */
  readonly heldUntil: Instant | null;
  /** Of a case: from whom, and by which code they know it. */
  readonly supplier: string | null;
  readonly code: string | null;
};

/**
 * The labels of a day as it stands: of what came, of what is worked on or stands to be served, and
 * of what is kept. Of one lot or batch alone where `only` names it.
 */
export function labelsOf(record: DayRecord, only: string | null = null): readonly Label[] {
  const lots = record.lots.map(caseLabel);
  const batches = record.flows.flatMap((flow) => batchLabels(record, flow));
  return [...lots, ...batches].filter(({ id }) => only === null || id === only);
}

function caseLabel(lot: LotRow): Label {
  const { id, name, pieces, weightKg, useBy, supplier, code, at, by, allergens = [] } = lot;
  return {
    ...{ on: 'case', id, name, service: null, lots: [id], allergens, pieces, weightKg },
    ...{ since: { at, by }, useBy, heldUntil: null, supplier, code },
  };
}

function batchLabels(record: DayRecord, flow: BatchFlow): Label[] {
  const { batch: id, dishName, label, begunAt } = flow;
  if (!label) return [];
  const { allergens, pieces, useBy, begunBy, stands, kept } = label;
  const lots = [...lotsOfBatch(record, id)]
    .sort((a, b) => b.weightKg - a.weightKg)
    .flatMap(({ lot }) => lot ?? []);
  const service = record.services.find((each) => each.id === flow.service)?.name ?? null;
  const plain = { id, lots, allergens, heldUntil: null, supplier: null, code: null } as const;
  const tray: Label = {
    ...{ ...plain, on: 'tray', name: flow.name, service, pieces, weightKg: flow.inKg, useBy },
    since: { at: begunAt, by: begunBy },
  };
  const pan: Label[] = stands
    ? [
        {
          ...{ ...tray, on: 'pan', name: dishName, weightKg: null, useBy: null },
          ...{ since: { at: stands.at, by: stands.by }, heldUntil: stands.heldUntil },
        },
      ]
    : [];
  const rest: Label[] = kept
    ? [
        {
          ...{ ...plain, on: 'kept', name: dishName, service: null, pieces: null },
          ...{ weightKg: kept.weightKg, useBy: kept.lastDay, since: { at: kept.at, by: kept.by } },
        },
      ]
    : [];
  return [...(stands || kept || flow.isThrownOut ? [] : [tray]), ...pan, ...rest];
}
