import Database from 'better-sqlite3';
import { assert, type CommandId, canonical, must } from '../../shared/kernel/index.ts';
import type { Answer } from '../../shared/protocol/index.ts';
import { EMPTY_HEAD, linkHash } from './chain.ts';
import type { Appended, Batch, Entry, EventLog, Head } from './event-log.ts';

/** `COAL`: how the file says what it is. */
const APPLICATION_ID = 0x434f_414c;
const LAYOUT = 1;
const FULL = 2;
/** Entries read at a time. */
const PAGE = 256;

const TABLES = `
  create table entry (
    seq integer primary key,
    command text not null,
    bytes blob not null,
    hash blob not null
  ) strict;
  create trigger entry_stays before update on entry
    begin select raise(abort, 'an entry never changes'); end;
  create trigger entry_remains before delete on entry
    begin select raise(abort, 'an entry is never removed'); end;
  create table answer (command text primary key, answer text not null) strict, without rowid;
  create table head (
    one integer primary key check (one = 1),
    seq integer not null,
    hash blob not null,
    epoch text not null
  ) strict;
`;

/** This file is something else, or of a layout this program does not know. */
export class NotOurLog extends Error {
  override readonly name = 'NotOurLog';
}

/**
 * The log in one SQLite file. It must lie on a disk of this machine: a network drive cannot keep
 * its promises.
 */
export function openSqliteLog(file: string): EventLog {
  const db = new Database(file);
  try {
    prepareFile(db, file);
    return logIn(db);
  } catch (fault) {
    db.close();
    throw fault;
  }
}

/**
 * The same log as it stands at this moment, to be read and left as it is, also while a hub writes
 * to it: one snapshot is held until it is closed.
 */
export function readSqliteLog(file: string): EventLog {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    checkLayout(db, file);
    db.exec('begin');
    return logIn(db);
  } catch (fault) {
    db.close();
    throw fault;
  }
}

function prepareFile(db: Database.Database, file: string) {
  assert(db.pragma('journal_mode = wal', { simple: true }) === 'wal', `${file} cannot keep a WAL`);
  // Asked for at every opening: what the library takes by itself on a file already in WAL is
  // NORMAL,
  // which may lose the last commits when the power goes.
  db.pragma('synchronous = full');
  assert(db.pragma('synchronous', { simple: true }) === FULL, `${file} is not fully synced`);
  // Where a sync stops at the drive's own cache, ask for the one that does not.
  db.pragma('fullfsync = on');
  db.pragma('checkpoint_fullfsync = on');
  const isNew = db.prepare('select count(*) from sqlite_schema').pluck().get() === 0;
  if (isNew) db.transaction(() => layOut(db)).exclusive();
  checkLayout(db, file);
}

function checkLayout(db: Database.Database, file: string) {
  const kind = db.pragma('application_id', { simple: true });
  const layout = db.pragma('user_version', { simple: true });
  if (kind !== APPLICATION_ID) throw new NotOurLog(`${file} is a database of another program`);
  if (layout !== LAYOUT)
    throw new NotOurLog(`${file} has layout ${layout}; this program: ${LAYOUT}`);
}

function layOut(db: Database.Database) {
  db.pragma(`application_id = ${APPLICATION_ID}`);
  db.pragma(`user_version = ${LAYOUT}`);
  db.exec(TABLES);
  db.prepare('insert into head values (1, ?, unhex(?), ?)').run(
    EMPTY_HEAD.seq,
    EMPTY_HEAD.hash,
    EMPTY_HEAD.epoch,
  );
}

function logIn(db: Database.Database): EventLog {
  const selectHead = db.prepare<[], Head>('select seq, lower(hex(hash)) as hash, epoch from head');
  const selectAnswer = db.prepare<[string], string>('select answer from answer where command = ?');
  const selectEntries = db.prepare<[number, number], Entry>(
    `select seq, command as commandId, bytes, lower(hex(hash)) as hash
     from entry where seq >= ? order by seq limit ?`,
  );
  const setEpoch = db.prepare<[string]>('update head set epoch = ?');
  const setHead = db.prepare<[number, string]>('update head set seq = ?, hash = unhex(?)');
  const insertAnswer = db.prepare<[string, string]>('insert into answer values (?, ?)');
  const insertEntry = db.prepare<[number, string, Uint8Array, string]>(
    'insert into entry values (?, ?, ?, unhex(?))',
  );
  const headNow = () => must(selectHead.get(), 'the head of the log');

  const append = db.transaction((batch: Batch): Appended => {
    const head = headNow();
    if (head.epoch !== batch.epoch) return { ok: false, why: 'fenced', epoch: head.epoch };
    if (head.seq !== batch.expectedSeq) return { ok: false, why: 'moved', seq: head.seq };
    let { seq, hash } = head;
    for (const { commandId, bytes } of batch.entries) {
      seq += 1;
      hash = linkHash(hash, bytes);
      insertEntry.run(seq, commandId, bytes, hash);
    }
    for (const { commandId, answer } of batch.answers)
      insertAnswer.run(commandId, canonical(answer));
    setHead.run(seq, hash);
    return { ok: true, head: { seq, hash, epoch: head.epoch } };
  });

  return {
    claim: async (epoch) => {
      setEpoch.run(epoch);
      return headNow();
    },
    append: async (batch) => {
      try {
        return append.immediate(batch);
      } catch (fault) {
        if (isDoubled(fault)) return { ok: false, why: 'doubled' };
        throw fault;
      }
    },
    answerTo: async (command: CommandId) => {
      const stored = selectAnswer.pluck().get(command) as string | undefined;
      return stored === undefined ? null : (JSON.parse(stored) as Answer);
    },
    head: async () => headNow(),
    async *read(fromSeq) {
      for (let next = fromSeq; ; ) {
        const { items, fault } = untilFault(selectEntries.iterate(next, PAGE));
        yield* items;
        if (fault) throw fault;
        if (items.length < PAGE) return;
        next = must(items.at(-1), 'the last of a full page').seq + 1;
      }
    },
    close: async () => {
      db.close();
    },
  };
}

/**
 * What a query gives until it meets a page that cannot be read. Taken at once, since a query left
 * open while its reader waits would hold up every other on this connection.
 */
function untilFault<T>(rows: Iterable<T>): { items: T[]; fault: unknown } {
  const items: T[] = [];
  try {
    for (const row of rows) items.push(row);
    return { items, fault: null };
  } catch (fault) {
    return { items, fault };
  }
}

/** The only unique key that a batch can hit: entries are numbered inside the same transaction. */
function isDoubled(fault: unknown): boolean {
  return fault instanceof Database.SqliteError && fault.code === 'SQLITE_CONSTRAINT_PRIMARYKEY';
}
