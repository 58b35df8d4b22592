import type { CommandId } from '../../shared/kernel/index.ts';
import { answered, databaseOf, kept } from './database.ts';
import type { KeptTap, Outbox } from './outbox.ts';

type Stored = KeptTap & { readonly id: CommandId; readonly order: number };

/**
 * Asks the browser to have the bytes on the medium, not only with the system, before it says so.
 */
const STRICT = { durability: 'strict' } as const;

/** The outbox in the browser's IndexedDB, in a database of this name. */
export function indexedOutbox(name: string): Outbox {
  const database = databaseOf(name, (made) => {
    made.createObjectStore('taps', { keyPath: 'id' }).createIndex('order', 'order');
  });
  const write = async () => (await database()).transaction('taps', 'readwrite', STRICT);
  return {
    async all() {
      const taps = (await database()).transaction('taps').objectStore('taps').index('order');
      const stored: readonly Stored[] = await answered(taps.getAll());
      return stored.map(({ command, refusal }) => ({ command, refusal }));
    },
    async put({ command, refusal }) {
      const writing = await write();
      const done = kept(writing);
      const taps = writing.objectStore('taps');
      const { id } = command;
      const before: Stored | undefined = await answered(taps.get(id));
      const order = before?.order ?? (await nextOrder(taps.index('order')));
      await answered(taps.put({ id, order, command, refusal } satisfies Stored));
      await done;
    },
    async remove(id) {
      const writing = await write();
      const done = kept(writing);
      await answered(writing.objectStore('taps').delete(id));
      await done;
    },
  };
}

/** Inside the writing transaction, so that two tabs never take the same number. */
async function nextOrder(index: IDBIndex): Promise<number> {
  const last = await answered(index.openCursor(null, 'prev'));
  return Number(last?.key ?? 0) + 1;
}
