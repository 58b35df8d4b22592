import { existsSync } from 'node:fs';
import Database from 'better-sqlite3';
import type { Carry } from '../../shared/day/index.ts';
import { canonical } from '../../shared/kernel/index.ts';
import type { DayEvidence, DayRecord } from '../../shared/record/index.ts';
import { type Seal, sealSchema } from './seal.ts';
import { digestOf } from './signing.ts';

/**
 * Seals of days, and what was drawn from each: a store that can be thrown away, but for the seals.
 * All else is computed from the log again; what a seal vouches for need not be.
 */
export type RecordStore = {
  /** All seals, in their order; those that cannot be read end the list. */
  seals(): readonly Seal[];
  /** The last of a day; null where it has none. */
  sealOf(day: string): Seal | null;
  add(seal: Seal, drawn: Drawn): void;
  /** What the last day that is over left to the next; null where none is. */
  start(): { readonly seal: Seal; readonly carry: Carry } | null;
  record(day: string): DayRecord | null;
  evidence(day: string): DayEvidence | null;
  /** Days with a seal, in their order. */
  days(): readonly string[];
  /** The days that a lot came on, or went into a batch on, in their order. */
  daysOfLot(lot: string): readonly string[];
  close(): void;
};

export type Drawn = {
  readonly record: DayRecord;
  readonly evidence: DayEvidence;
  readonly carry: Carry;
};

const TABLES = `
  create table if not exists seal (n integer primary key, day text not null, seal text not null)
    strict;
  create index if not exists seal_of on seal (day);
  create table if not exists drawn (
    day text primary key, n integer not null, record text not null, evidence text not null
  ) strict, without rowid;
  create table if not exists carry (
    one integer primary key check (one = 1), n integer not null, carry text not null
  ) strict;
  create table if not exists lot (
    lot text not null, day text not null, primary key (lot, day)
  ) strict, without rowid;
`;

/** @param file `:memory:` keeps nothing. */
export function openRecordStore(file: string): RecordStore {
  const db = new Database(file);
  db.pragma('journal_mode = wal');
  db.pragma('synchronous = full');
  db.exec(TABLES);
  return storeIn(db);
}

/** The same, to be read and left as it is. */
export function readRecordStore(file: string): RecordStore {
  return storeIn(new Database(file, { readonly: true, fileMustExist: true }));
}

/** The seals in a file; none where there is no such file. */
export function sealsIn(file: string): readonly Seal[] {
  if (!existsSync(file)) return [];
  const store = readRecordStore(file);
  try {
    return store.seals();
  } finally {
    store.close();
  }
}

function storeIn(db: Database.Database): RecordStore {
  const statement = <Row>(sql: string) => db.prepare<(string | number)[], Row>(sql);
  const selectSeal = statement<{ seal: string }>('select seal from seal order by n');
  const selectLast = statement<{ seal: string }>(
    'select seal from seal where day = ? order by n desc limit 1',
  );
  const selectNth = statement<{ seal: string }>('select seal from seal where n = ?');
  const selectCarry = statement<{ n: number; carry: string }>('select n, carry from carry');
  const selectDrawn = statement<{ n: number; record: string; evidence: string }>(
    'select n, record, evidence from drawn where day = ?',
  );
  const selectNumber = statement<{ n: number }>('select n from drawn where day = ?');
  const selectDays = statement<{ day: string }>('select day from drawn order by day');
  const selectLot = statement<{ day: string }>('select day from lot where lot = ? order by day');
  const nth = (n: number): Seal | null => sealIn(selectNth.get(n)?.seal);

  /** What is kept of a day, if it is what its seal says. */
  function vouched(day: string, what: 'record' | 'evidence'): unknown {
    const row = selectDrawn.get(day);
    const seal = row && nth(row.n);
    return seal?.day === day && digestOf(row?.[what] ?? '') === seal[what]
      ? JSON.parse(row?.[what] ?? 'null')
      : null;
  }

  /** Records are asked for again and again, a week of them for each trace. */
  const records = new Map<string, { readonly n: number; readonly record: DayRecord | null }>();
  function recordOn(day: string): DayRecord | null {
    const n = selectNumber.get(day)?.n ?? 0;
    const known = records.get(day);
    if (known?.n === n) return known.record;
    const record = vouched(day, 'record') as DayRecord | null;
    records.set(day, { n, record });
    return record;
  }

  return {
    seals() {
      const seals = selectSeal.all().map(({ seal }) => sealIn(seal));
      const end = seals.indexOf(null);
      return (end < 0 ? seals : seals.slice(0, end)).flatMap((seal) => seal ?? []);
    },
    sealOf: (day) => sealIn(selectLast.get(day)?.seal),
    add: (seal, drawn) => addTo(db, seal, drawn),
    start() {
      const row = selectCarry.get();
      const seal = row && nth(row.n);
      if (!row || !seal || digestOf(row.carry) !== seal.carry) return null;
      return { seal, carry: JSON.parse(row.carry) as Carry };
    },
    record: recordOn,
    evidence: (day) => vouched(day, 'evidence') as DayEvidence | null,
    days: () => selectDays.all().map(({ day }) => day),
    daysOfLot: (lot) => selectLot.all(lot).map(({ day }) => day),
    close: () => void db.close(),
  };
}

function addTo(db: Database.Database, seal: Seal, { record, evidence, carry }: Drawn): void {
  const lots = [
    ...record.lots.map(({ id }) => id),
    ...record.flows.flatMap(({ from }) => from.flatMap(({ lot }) => lot ?? [])),
  ];
  db.transaction(() => {
    db.prepare('insert into seal values (?, ?, ?)').run(seal.n, seal.day, canonical(seal));
    db.prepare('replace into drawn values (?, ?, ?, ?)').run(
      ...[seal.day, seal.n, canonical(record), canonical(evidence)],
    );
    db.prepare('delete from lot where day = ?').run(seal.day);
    const insertLot = db.prepare('insert or ignore into lot values (?, ?)');
    for (const lot of new Set(lots)) insertLot.run(lot, seal.day);
    if (seal.why === 'turned') {
      db.prepare('replace into carry values (1, ?, ?)').run(seal.n, canonical(carry));
    }
  }).immediate();
}

function sealIn(text: string | undefined): Seal | null {
  if (text === undefined) return null;
  try {
    const read = sealSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
