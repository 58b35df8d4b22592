import type { DBSchema, IDBPDatabase } from 'idb';
import { openDB } from 'idb';
import type { ViewMessage } from '../../shared/protocol/index.ts';
import type { LastHeard, LastView } from './last-view.ts';

interface ViewSchema extends DBSchema {
  day: { key: 'message'; value: ViewMessage };
  heard: { key: 'heard'; value: LastHeard };
}
type Database = IDBPDatabase<ViewSchema>;

/**
 * The last view in the browser's IndexedDB, in a database of this name. Unlike a tap it may be lost
 * with the power: the hub has it, so the browser need not wait for the medium.
 */
export function indexedView(name: string): LastView {
  let opened: Promise<Database> | null = null;
  const forgetDatabase = () => {
    opened = null;
  };
  const database = () => {
    opened ??= openView(name, forgetDatabase).catch((fault: unknown) => {
      forgetDatabase();
      throw fault;
    });
    return opened;
  };
  const write = async () => (await database()).transaction(['day', 'heard'], 'readwrite');
  return {
    async read() {
      const reading = (await database()).transaction(['day', 'heard']);
      const [message, heard] = await Promise.all([
        reading.objectStore('day').get('message'),
        reading.objectStore('heard').get('heard'),
      ]);
      return message && heard ? { message, heard } : null;
    },
    async keepDay({ message, heard }) {
      const writing = await write();
      await Promise.all([
        writing.objectStore('day').put(message, 'message'),
        writing.objectStore('heard').put(heard, 'heard'),
        writing.done,
      ]);
    },
    async keepHeard(heard) {
      await (await database()).put('heard', heard, 'heard');
    },
    async forget() {
      const writing = await write();
      await Promise.all([
        writing.objectStore('day').clear(),
        writing.objectStore('heard').clear(),
        writing.done,
      ]);
    },
  };
}

async function openView(name: string, lost: () => void): Promise<Database> {
  const database: Database = await openDB<ViewSchema>(name, 1, {
    upgrade(db) {
      db.createObjectStore('day');
      db.createObjectStore('heard');
    },
    blocking() {
      database.close();
      lost();
    },
    terminated: lost,
  });
  return database;
}
