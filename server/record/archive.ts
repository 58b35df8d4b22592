import type { DayState } from '../../shared/day/index.ts';
import { addDays } from '../../shared/kernel/index.ts';
import type { PrintedDay } from '../../shared/paper/index.ts';
import type { DayRecord, DayTold, LotTrace } from '../../shared/record/index.ts';
import { evidenceOf, recordOf, traceOf } from '../../shared/record/index.ts';
import type { Stretch } from './export-file.ts';
import type { RecordStore } from './record-store.ts';
import type { Seal } from './seal.ts';
import { fingerprintOf } from './signing.ts';

/** The days of a kitchen, those that are over and the one that runs. */
export type Archive = {
  days(): readonly string[];
  told(day: string): ArchivedDay | null;
  /** Those of `days` from one to another, both with it. */
  between(from: string, to: string): readonly ArchivedDay[];
  /** Null where no day knows that lot. */
  trace(lot: string): LotTrace | null;
  record(day: string): DayRecord | null;
  /** With the entries that it is drawn from, to be exported. */
  stretch(days: readonly ArchivedDay[]): Stretch;
};

/** `seal` is null while the day runs, and where another day has begun since the log was opened. */
export type ArchivedDay = DayTold & { readonly seal: Seal | null };

/** Days that what is kept may be served on after its own. */
const KEPT_DAYS = 6;

/** @param running the day as it is now, which goes before what was sealed of it. */
export function archiveOf(store: RecordStore, running: () => DayState): Archive {
  const runs = () => running().plan?.built.day ?? null;
  const days = () => {
    const now = runs();
    const sealed = store.days();
    return now === null || sealed.includes(now) ? sealed : [...sealed, now].sort();
  };
  let last: { readonly state: DayState; readonly record: DayRecord | null } | null = null;
  function recordNow() {
    const state = running();
    if (last?.state !== state) last = { state, record: recordOf(state) };
    return last.record;
  }
  const record = (day: string) => (day === runs() ? recordNow() : store.record(day));
  function told(day: string): ArchivedDay | null {
    const isRunning = day === runs();
    const found = record(day);
    const evidence = isRunning ? evidenceOf(running()) : store.evidence(day);
    if (!found || !evidence) return null;
    const seal = store.sealOf(day);
    const isSealed = seal !== null && (!isRunning || seal.lastSeq === running().seq);
    return { record: found, evidence, seal: isSealed ? seal : null };
  }
  return {
    ...{ days, told, record },
    between: (from, to) =>
      days()
        .filter((day) => from <= day && day <= to)
        .flatMap((day) => told(day) ?? []),
    trace(lot) {
      const known = days();
      const its = new Set([...store.daysOfLot(lot), ...(runs() === null ? [] : [runs()])]);
      // What it fed may have been kept, and served on the days after.
      const spans = [...its].flatMap((day) =>
        day === null ? [] : [[day, addDays(day, KEPT_DAYS)]],
      );
      const near = known.filter((day) =>
        spans.some(([from = '', to = '']) => from <= day && day <= to),
      );
      const records = near.flatMap((day) => record(day) ?? []);
      return traceOf(records, lot as Parameters<typeof traceOf>[1]);
    },
    stretch: (chosen) => stretchOf(store.seals(), chosen),
  };
}

function stretchOf(seals: readonly Seal[], days: readonly ArchivedDay[]): Stretch {
  const named = new Set(days.map(({ record }) => record.day as string));
  const [first] = days;
  const own = seals.filter(({ day }) => named.has(day));
  const before = seals.findLast(
    ({ day, why }) => why === 'turned' && first !== undefined && day < first.record.day,
  );
  const isOpen = days.some(({ seal }) => seal?.why !== 'turned');
  return {
    kitchen: first?.record.kitchen ?? '',
    days: days.map(({ record, evidence }) => ({ record, evidence })),
    firstSeq: (before?.lastSeq ?? 0) + 1,
    lastSeq: isOpen ? null : Math.max(...own.map(({ lastSeq }) => lastSeq)),
    seals: own,
  };
}

/** As it goes on a sheet. */
export function printedDay({ record, evidence, seal }: ArchivedDay): PrintedDay {
  if (!seal) return { record, evidence, seal };
  const { hash, signature, sealedAt, key } = seal;
  return { record, evidence, seal: { hash, signature, sealedAt, key: fingerprintOf(key) } };
}
