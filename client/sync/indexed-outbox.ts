import type { DBSchema, IDBPDatabase } from 'idb';
import { openDB } from 'idb';
import type { CommandId } from '../../shared/kernel/index.ts';
import type { KeptTap, Outbox } from './outbox.ts';

type Stored = KeptTap & { readonly id: CommandId; readonly order: number };

interface OutboxSchema extends DBSchema {
  taps: { key: string; value: Stored; indexes: { order: number } };
}
type Database = IDBPDatabase<OutboxSchema>;

/**
 * Asks the browser to have the bytes on the medium, not only with the system, before it says so.
 */
const STRICT = { durability: 'strict' } as const;

/** The outbox in the browser's IndexedDB, in a database of this name. */
export function indexedOutbox(name: string): Outbox {
  let opened: Promise<Database> | null = null;
  const database = () => {
    opened ??= openOutbox(name, forget).catch((fault: unknown) => {
      forget();
      throw fault;
    });
    return opened;
  };
  const forget = () => {
    opened = null;
  };
  return {
    async all() {
      const taps = await (await database()).getAllFromIndex('taps', 'order');
      return taps.map(({ command, refusal }) => ({ command, refusal }));
    },
    async put({ command, refusal }) {
      const writing = (await database()).transaction('taps', 'readwrite', STRICT);
      const { id } = command;
      const before = await writing.store.get(id);
      const order = before?.order ?? (await nextOrder(writing.store.index('order')));
      await writing.store.put({ id, order, command, refusal });
      await writing.done;
    },
    async remove(id) {
      const writing = (await database()).transaction('taps', 'readwrite', STRICT);
      await writing.store.delete(id);
      await writing.done;
    },
  };
}

/**
 * `lost` is called when the browser takes the database away, so that the next use opens it anew.
 */
async function openOutbox(name: string, lost: () => void): Promise<Database> {
  const database: Database = await openDB<OutboxSchema>(name, 1, {
    upgrade(db) {
      db.createObjectStore('taps', { keyPath: 'id' }).createIndex('order', 'order');
    },
    blocking() {
      database.close();
      lost();
    },
    terminated: lost,
  });
  return database;
}

type LastFirst = {
  openCursor(query: null, direction: 'prev'): Promise<{ readonly key: number } | null>;
};

/** Inside the writing transaction, so that two tabs never take the same number. */
async function nextOrder(index: LastFirst): Promise<number> {
  const last = await index.openCursor(null, 'prev');
  return (last?.key ?? 0) + 1;
}
