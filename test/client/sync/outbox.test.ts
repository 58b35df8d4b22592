import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { indexedOutbox, memoryOutbox } from '../../../client/sync/index.ts';
import { outboxContract } from '../../contracts/outbox.ts';

outboxContract('memory', () => {
  const kept = new Map();
  return { outbox: memoryOutbox(kept), again: () => memoryOutbox(kept) };
});

let databases = 0;
outboxContract('IndexedDB', () => {
  databases += 1;
  const name = `outbox ${databases}`;
  return { outbox: indexedOutbox(name), again: () => indexedOutbox(name) };
});

describe('the outbox in IndexedDB', () => {
  it('says so when it cannot keep a tap, and tries the store anew the next time', async () => {
    const open = indexedDB.open.bind(indexedDB);
    indexedDB.open = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    const outbox = indexedOutbox('outbox full');
    await expect(outbox.all()).rejects.toThrow('full');
    indexedDB.open = open;
    expect(await outbox.all()).toEqual([]);
  });
});
