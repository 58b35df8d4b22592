/** What a request to the browser's database comes to. */
export const answered = <Found>(request: IDBRequest<Found>) =>
  new Promise<Found>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Resolves when all that a transaction wrote is kept. */
export function kept(transaction: IDBTransaction): Promise<void> {
  const done = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new DOMException('', 'AbortError'));
  });
  // Whoever asked hears of it by the request that failed, and may not come to wait for this.
  done.catch(() => {});
  return done;
}

/**
 * The database of this name, opened at its first use, and anew after the browser took it away or
 * would not give it; `build` makes its stores where it has none yet.
 */
export function databaseOf(
  name: string,
  build: (database: IDBDatabase) => void,
): () => Promise<IDBDatabase> {
  let opened: Promise<IDBDatabase> | null = null;
  const forget = () => {
    opened = null;
  };
  const open = async () => {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => build(request.result);
    const database = await answered(request);
    database.onclose = forget;
    database.onversionchange = () => {
      database.close();
      forget();
    };
    return database;
  };
  return () => {
    opened ??= open().catch((fault: unknown) => {
      forget();
      throw fault;
    });
    return opened;
  };
}
