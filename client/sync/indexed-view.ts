import type { ViewMessage } from '../../shared/protocol/index.ts';
import { answered, databaseOf, kept } from './database.ts';
import type { LastHeard, LastView } from './last-view.ts';

/**
 * The last view in the browser's IndexedDB, in a database of this name. Unlike a tap it may be lost
 * with the power: the hub has it, so the browser need not wait for the medium.
 */
export function indexedView(name: string): LastView {
  const database = databaseOf(name, (made) => {
    made.createObjectStore('day');
    made.createObjectStore('heard');
  });
  const write = async (put: (day: IDBObjectStore, heard: IDBObjectStore) => void) => {
    const writing = (await database()).transaction(['day', 'heard'], 'readwrite');
    const done = kept(writing);
    put(writing.objectStore('day'), writing.objectStore('heard'));
    await done;
  };
  return {
    async read() {
      const reading = (await database()).transaction(['day', 'heard']);
      const [message, heard] = await Promise.all([
        answered<ViewMessage | undefined>(reading.objectStore('day').get('message')),
        answered<LastHeard | undefined>(reading.objectStore('heard').get('heard')),
      ]);
      return message && heard ? { message, heard } : null;
    },
    keepDay: ({ message, heard: since }) =>
      write((day, heard) => {
        day.put(message, 'message');
        heard.put(since, 'heard');
      }),
    keepHeard: (since) => write((_day, heard) => void heard.put(since, 'heard')),
    forget: () =>
      write((day, heard) => {
        day.clear();
        heard.clear();
      }),
  };
}
