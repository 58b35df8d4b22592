import { expect, it } from 'vitest';
import { leaveWhenTurnedAway } from '../../../client/shell/turned-away.ts';
import type { Sync, SyncState } from '../../../client/sync/index.ts';
import type { Refusal } from '../../../shared/view/index.ts';

function screen() {
  const listeners = new Set<() => void>();
  const went: string[] = [];
  const waiting: { run: () => void; atMs: number }[] = [];
  let nowMs = 0;
  const sync = {
    state: { blank: null, pending: [], refused: [] } as unknown as SyncState,
    subscribe(listener: () => void) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  leaveWhenTurnedAway(sync as unknown as Sync, {
    go: (path) => went.push(path),
    nowMs: () => nowMs,
    later: (run, ms) => waiting.push({ run, atMs: nowMs + ms }),
  });
  return {
    went,
    passes(ms: number) {
      nowMs += ms;
      const due = waiting.filter(({ atMs }) => atMs <= nowMs);
      waiting.splice(0, waiting.length, ...waiting.filter(({ atMs }) => atMs > nowMs));
      for (const { run } of due) run();
    },
    is(change: { blank?: Refusal | null; pending?: number; refused?: number }) {
      const { blank = null, pending = 0, refused = 0 } = change;
      const many = (n: number) => Array.from({ length: n });
      sync.state = { blank, pending: many(pending), refused: many(refused) } as never;
      for (const listener of listeners) listener();
    },
  };
}

it('stays where it is while the hub has something to say to it', () => {
  const { went, is } = screen();
  is({});
  is({ blank: { rule: 'no-plan' } });
  expect(went).toEqual([]);
});

it('goes to ask to be let in, its taps staying on the disk until it is', () => {
  const { went, is } = screen();
  is({ blank: { rule: 'screen-unknown' }, pending: 2 });
  expect(went).toEqual(['/pair.html']);
});

it('that was taken off stays until its taps are answered and what was refused is read', () => {
  const { went, is } = screen();
  is({ blank: { rule: 'screen-revoked' }, pending: 1 });
  is({ blank: { rule: 'screen-revoked' }, refused: 1 });
  expect(went).toEqual([]);
  is({ blank: { rule: 'screen-revoked' } });
  is({ blank: { rule: 'screen-revoked' } });
  expect(went).toEqual(['/pair.html']);
});

it('that was moved goes to find its new place', () => {
  const { went, is } = screen();
  is({ blank: { rule: 'screen-elsewhere' } });
  expect(went).toEqual(['/pair.html']);
});

it('that was moved goes between two taps, also where it was let in again for the first', () => {
  const { went, is, passes } = screen();
  is({ pending: 1 });
  is({ blank: { rule: 'screen-elsewhere' }, pending: 1 });
  is({ pending: 1 });
  passes(1_000);
  is({});
  expect(went).toEqual([]);
  passes(5_000);
  is({ pending: 1 });
  is({});
  passes(7_000);
  expect(went).toEqual([]);
  passes(1_100);
  expect(went).toEqual(['/pair.html']);
});
