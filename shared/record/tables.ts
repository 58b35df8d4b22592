import type { Instant } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
import type { Field, Table } from './csv.ts';
import type { DayEvidence } from './evidence.ts';
import type { DayRecord } from './record.ts';
import type { LotTrace } from './trace.ts';

/** A day as it goes into a table. */
export type DayTold = { readonly record: DayRecord; readonly evidence: DayEvidence };

/** The tables of a stretch of days, a line a fact; names are in English, weights in kilograms. */
export const tables: Readonly<Record<TableName, (days: readonly DayTold[]) => Table>> = {
  lots: (days) => ({
    header: [
      ...['day', 'lot', 'cut', 'pieces', 'weight_kg', 'supplier', 'supplier_code', 'temp_c'],
      ...['use_by', 'received_utc', 'received_local', 'received_by'],
    ],
    rows: days.flatMap(({ record: { day, zone, lots } }) =>
      lots.map((lot) => [
        ...[day, lot.id, lot.name.en, lot.pieces, grams(lot.weightKg), lot.supplier, lot.code],
        ...[lot.tempC, lot.useBy, ...moment(lot.at, zone), lot.by],
      ]),
    ),
  }),
  batches: (days) => ({
    header: [
      ...['day', 'batch', 'dish', 'service', 'begun_utc', 'begun_local', 'lot', 'trim_of'],
      ...['pieces', 'weight_kg', 'served_kg', 'kept_kg'],
    ],
    rows: days.flatMap(({ record: { day, zone, flows } }) =>
      flows.flatMap((flow) =>
        flow.from.map(({ lot, of, pieces, weightKg }) => [
          ...[day, flow.batch, flow.dishName.en, flow.service, ...moment(flow.begunAt, zone)],
          ...[lot, of, grams(pieces), grams(weightKg), grams(flow.servedKg), grams(flow.keptKg)],
        ]),
      ),
    ),
  }),
  readings: (days) => ({
    header: ['day', 'read_utc', 'read_local', 'of', 'what', 'temp_c', 'by'],
    rows: days.flatMap(({ record: { day, zone }, evidence: { readings } }) =>
      readings.map((row) => [
        ...[day, ...moment(row.at, zone), row.of, row.what.en, row.tempC, row.by],
      ]),
    ),
  }),
  checks: (days) => ({
    header: [
      ...['day', 'at_utc', 'at_local', 'check', 'what', 'temp_c', 'thermometer', 'correction'],
      ...['by', 'felt', 'felt_words'],
    ],
    rows: days.flatMap(({ record: { day, zone }, evidence: { checks } }) =>
      checks.map((row) => [
        ...[day, ...moment(row.at, zone), row.check, row.what.en, row.tempC, row.thermometer],
        ...[row.action, row.by, row.feel?.is ?? null, row.feel?.words?.en ?? null],
      ]),
    ),
  }),
  work: (days) => ({
    header: [
      ...['day', 'batch', 'task', 'pieces', 'started_utc', 'started_local', 'finished_utc'],
      ...['finished_local', 'by'],
    ],
    rows: days.flatMap(({ record: { day, zone }, evidence: { work } }) =>
      work.map((row) => [
        ...[day, row.batch.en, row.title.en, row.pieces, ...moment(row.startedAt, zone)],
        ...[...moment(row.finishedAt, zone), row.by],
      ]),
    ),
  }),
};

export type TableName = 'lots' | 'batches' | 'readings' | 'checks' | 'work';

/** Where a lot went, a line for each amount; the weights add up to what came. */
export function traceTable({ lot, ...trace }: LotTrace): Table {
  const row = (
    day: string | null,
    where: string,
    what: string,
    { kg, isWeighed = false }: { readonly kg: number; readonly isWeighed?: boolean },
  ): Field[] => [...[lot.id, day, where, what, grams(kg)], isWeighed ? 'weighed' : 'reckoned'];
  return {
    header: ['lot', 'day', 'where', 'what', 'weight_kg', 'how'],
    rows: [
      ...trace.services.map(({ day, service, dishName, weightKg }) =>
        row(day, `service ${service}`, dishName.en, { kg: weightKg }),
      ),
      ...trace.kept.map(({ day, dishName, weightKg }) =>
        row(day, 'kept', dishName.en, { kg: weightKg, isWeighed: true }),
      ),
      ...trace.thrown.map(({ day, dishName, weightKg }) =>
        row(day, 'thrown out', dishName.en, { kg: weightKg }),
      ),
      ...[...trace.kept, ...trace.thrown].flatMap(({ dishName, mayHaveFed }) =>
        mayHaveFed.map(({ day, service }) =>
          row(day, `may have fed service ${service}`, dishName.en, { kg: 0 }),
        ),
      ),
      ...trace.tubs.map(({ day, name, goes, weightKg, isWeighed }) =>
        row(day, goes, name.en, { kg: weightKg, isWeighed }),
      ),
      row(null, 'lost in trimming, cooking and carving', lot.name.en, { kg: trace.lossKg }),
      row(null, 'left', lot.name.en, { kg: trace.leftKg }),
      ...(trace.sentBackKg > 0
        ? [row(null, 'sent back', lot.name.en, { kg: trace.sentBackKg, isWeighed: true })]
        : []),
    ],
  };
}

const grams = (amount: number) => Math.round(amount * 1_000) / 1_000;

/** In UTC, and as the kitchen's wall clock showed it. */
function moment(at: Instant | null, zone: string): Field[] {
  if (at === null) return [null, null];
  const { day, time } = wallTime(at, zone);
  return [utc(at), `${day}T${time}`];
}

/** ISO 8601, without a clock of our own: whole seconds since 1970 as a date and a time of day. */
function utc(at: Instant): string {
  const { day, time } = wallTime(at, 'UTC');
  const seconds = Math.floor((at / 1000) % 60);
  return `${day}T${time}:${String(seconds).padStart(2, '0')}Z`;
}
