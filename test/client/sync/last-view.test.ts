import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import type { LastDay, LastView, Sync } from '../../../client/sync/index.ts';
import { createSync, indexedView, memoryOutbox, soleDrainer } from '../../../client/sync/index.ts';
import type { ScreenId, StationId, TaskId } from '../../../shared/kernel/index.ts';
import { instant } from '../../../shared/kernel/index.ts';
import { stationView } from '../fixtures.ts';
import { HUB_START, StagedHub, StagedTime } from './staged.ts';

let kept: LastDay | null;
const memoryView: LastView = {
  read: async () => kept,
  keepDay: async (day) => {
    kept = day;
  },
  keepHeard: async (heard) => {
    if (kept) kept = { ...kept, heard };
  },
  forget: async () => {
    kept = null;
  },
};
const brokenView: LastView = {
  read: () => Promise.reject(new Error('private')),
  keepDay: () => Promise.reject(new Error('full')),
  keepHeard: () => Promise.reject(new Error('full')),
  forget: () => Promise.reject(new Error('private')),
};

type Page = { readonly sync: Sync; readonly hub: StagedHub; readonly time: StagedTime };

/** A page that is loaded on a device, so long after the hub was started. */
async function load(afterMs: number, lastView = memoryView, wallErrorMs = 0): Promise<Page> {
  const time = new StagedTime();
  time.wallErrorMs = afterMs + wallErrorMs;
  const hub = new StagedHub(time);
  const sync = createSync({
    openLink: hub.open,
    outbox: memoryOutbox(),
    lastView,
    clock: time,
    timers: time,
    drainer: soleDrainer(),
    newId: () => 'tap-1',
    screenId: 'wall' as ScreenId,
    face: { kind: 'station', station: 'trim' as StationId },
  });
  await time.pass(0);
  return { sync, hub, time };
}

const viewAt = (seq: number, { now }: StagedHub, epoch = 'first') => ({
  epoch,
  seq,
  view: { ...stationView, seq, at: now },
});

const MINUTE_MS = 60_000;

/** A screen that hears the hub for so long, and is switched off. */
async function heardFor(ms: number, wallErrorMs = 0): Promise<void> {
  const { sync, hub, time } = await load(0, memoryView, wallErrorMs);
  hub.up();
  hub.listener?.view(viewAt(40, hub));
  await time.pass(ms);
  sync.close();
}

beforeEach(() => {
  kept = null;
});

describe('a screen that starts while the hub is away', () => {
  it('shows the last day at once, and soon that it is alone and since when', async () => {
    await heardFor(10 * MINUTE_MS);
    const { sync, time } = await load(30 * MINUTE_MS);
    expect(sync.state.view).toMatchObject({ face: 'station', seq: 40 });
    await time.pass(2000);
    const alone = sync.state.aloneSince ?? 0;
    // By what was written down, which is every third of a minute.
    expect(alone).toBeLessThanOrEqual(HUB_START + 10 * MINUTE_MS);
    expect(alone).toBeGreaterThan(HUB_START + 10 * MINUTE_MS - 22_000);
    await time.pass(MINUTE_MS);
    expect(sync.state.aloneSince).toBe(alone);
  });

  it('tells the hub’s time on, though its own clock is hours off', async () => {
    const wrongMs = -5 * 3_600_000;
    await heardFor(10 * MINUTE_MS, wrongMs);
    const { sync, time } = await load(30 * MINUTE_MS, memoryView, wrongMs);
    await time.pass(MINUTE_MS);
    expect(sync.hubNow()).toBe(HUB_START + 31 * MINUTE_MS);
  });

  it('keeps taps over the last day, to be sent when the hub is back', async () => {
    await heardFor(MINUTE_MS);
    const { sync, hub, time } = await load(30 * MINUTE_MS);
    sync.tap({ kind: 'start', task: 'ribs-1/square' as TaskId });
    await time.pass(0);
    expect(sync.state.pending.map(({ mark }) => mark)).toEqual(['here']);
    hub.up();
    await time.pass(0);
    expect(hub.received).toHaveLength(1);
  });

  it('takes whatever the hub says first for newer, and is alone no more', async () => {
    await heardFor(MINUTE_MS);
    const { sync, hub, time } = await load(30 * MINUTE_MS);
    await time.pass(5000);
    hub.up();
    // A hub with another log behind it, and a shorter one.
    hub.listener?.view(viewAt(3, hub, 'second'));
    expect(sync.state.seq).toBe(3);
    expect(sync.state.aloneSince).toBeNull();
  });

  it('never says that it is alone when the hub is there', async () => {
    await heardFor(MINUTE_MS);
    const { sync, hub, time } = await load(2 * MINUTE_MS);
    const said = new Set<unknown>();
    sync.subscribe(() => said.add(sync.state.aloneSince));
    await time.pass(300);
    hub.up();
    hub.listener?.view(viewAt(41, hub));
    await time.pass(3000);
    expect([...said]).toEqual([null]);
  });

  it('shows no day any more from which it was taken off', async () => {
    const { hub, time } = await load(0);
    hub.up();
    hub.listener?.view(viewAt(40, hub));
    await time.pass(5000);
    expect(kept).not.toBeNull();
    hub.listener?.blank({ epoch: 'first', seq: 41, refusal: { rule: 'screen-revoked' } });
    await time.pass(5000);
    expect(kept).toBeNull();
    const { sync } = await load(MINUTE_MS);
    expect(sync.state.view).toBeNull();
  });

  it('goes on as ever where the device can keep nothing', async () => {
    const { sync, hub, time } = await load(0, brokenView);
    hub.up();
    hub.listener?.view(viewAt(40, hub));
    await time.pass(MINUTE_MS);
    expect(sync.state.seq).toBe(40);
  });
});

describe('the last view in IndexedDB', () => {
  const day = (seq: number): LastDay => ({
    message: { epoch: 'first', seq, view: { ...stationView, seq } },
    heard: { hubAt: instant(HUB_START), wallMs: 5, speed: 60 },
  });

  it('is there again when the page is loaded anew, and is the last one', async () => {
    const view = indexedView('a');
    expect(await view.read()).toBeNull();
    await view.keepDay(day(40));
    await view.keepDay(day(41));
    expect(await indexedView('a').read()).toEqual(day(41));
    expect(await indexedView('b').read()).toBeNull();
  });

  it('knows when the hub was last heard without the day being written again', async () => {
    const view = indexedView('c');
    await view.keepDay(day(40));
    const heard = { hubAt: instant(HUB_START + 20_000), wallMs: 338, speed: 60 };
    await view.keepHeard(heard);
    expect(await view.read()).toEqual({ ...day(40), heard });
  });

  it('is gone when it is forgotten', async () => {
    const view = indexedView('d');
    await view.keepDay(day(40));
    await view.forget();
    expect(await indexedView('d').read()).toBeNull();
  });
});
