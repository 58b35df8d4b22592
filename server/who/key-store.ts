import Database from 'better-sqlite3';
import type { PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { PinHash } from './secrets.ts';

/**
 * The secrets of a hub, or rather what is kept in their place: digests. They lie beside the log and
 * not in it, for they must be able to be forgotten. Which screens and people belong to the hub the
 * log alone says; a key that it says nothing of opens nothing.
 */
export type KeyStore = {
  addToken(digest: string, screen: ScreenId): void;
  /** Whose token this is the digest of, also when the screen has been revoked since. */
  screenOf(digest: string): ScreenId | null;
  setPin(person: PersonId, pin: PinHash): void;
  pinOf(person: PersonId): PinHash | null;
  dropPin(person: PersonId): void;
  /** In UTC milliseconds by the machine's own clock. */
  sawScreen(screen: ScreenId, atMs: number): void;
  seenAt(screen: ScreenId): number | null;
  close(): void;
};

const TABLES = `
  create table if not exists token (
    digest text primary key, screen text not null
  ) strict, without rowid;
  create table if not exists pin (
    person text primary key, salt text not null, hash text not null
  ) strict, without rowid;
  create table if not exists seen (
    screen text primary key, at_ms integer not null
  ) strict, without rowid;
`;

/** @param file `:memory:` keeps nothing. */
export function openKeyStore(file: string): KeyStore {
  const db = new Database(file);
  db.pragma('journal_mode = wal');
  db.pragma('synchronous = full');
  // What was deleted is written over: a PIN that was changed is gone.
  db.pragma('secure_delete = on');
  db.exec(TABLES);
  const addToken = db.prepare<[string, ScreenId]>('insert into token values (?, ?)');
  const selectScreen = db.prepare<[string], ScreenId>('select screen from token where digest = ?');
  const setPin = db.prepare<[PersonId, string, string]>('replace into pin values (?, ?, ?)');
  const selectPin = db.prepare<[PersonId], PinHash>('select salt, hash from pin where person = ?');
  const dropPin = db.prepare<[PersonId]>('delete from pin where person = ?');
  const setSeen = db.prepare<[ScreenId, number]>('replace into seen values (?, ?)');
  const selectSeen = db.prepare<[ScreenId], number>('select at_ms from seen where screen = ?');
  return {
    addToken: (digest, screen) => void addToken.run(digest, screen),
    screenOf: (digest) => (selectScreen.pluck().get(digest) as ScreenId | undefined) ?? null,
    setPin: (person, { salt, hash }) => void setPin.run(person, salt, hash),
    pinOf: (person) => selectPin.get(person) ?? null,
    dropPin: (person) => void dropPin.run(person),
    sawScreen: (screen, atMs) => void setSeen.run(screen, atMs),
    seenAt: (screen) => (selectSeen.pluck().get(screen) as number | undefined) ?? null,
    close: () => void db.close(),
  };
}
