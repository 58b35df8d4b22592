// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BetweenTaps } from '../../../client/stand/between-taps.ts';
import { keepAwake } from '../../../client/stand/keep-awake.ts';
import { keepShell } from '../../../client/stand/keep-shell.ts';
import { nightByClock } from '../../../client/stand/night-by-clock.ts';
import { renew } from '../../../client/stand/renew.ts';
import type { Sync } from '../../../client/sync/index.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

type Pending = { readonly mark: 'tapped' | 'here' };

function screen(face = 'station') {
  const listeners = new Set<() => void>();
  const sync = {
    state: { pending: [] as Pending[], view: { face, zone: 'UTC' }, isUp: true },
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  const becomes = (change: { pending?: Pending[]; isUp?: boolean }) => {
    sync.state = { ...sync.state, ...change };
    for (const listener of listeners) listener();
  };
  return { sync: sync as unknown as Sync, becomes };
}

describe('between taps', () => {
  it('is eight seconds after a finger, so that what it did can be taken back where it was', () => {
    const between = new BetweenTaps(screen().sync);
    expect(between.isNow).toBe(true);
    dispatchEvent(new Event('pointerdown'));
    vi.advanceTimersByTime(7900);
    expect(between.isNow).toBe(false);
    vi.advanceTimersByTime(200);
    expect(between.isNow).toBe(true);
  });

  it('is not while a tap is in the page alone, however long that takes', () => {
    const { sync, becomes } = screen();
    const between = new BetweenTaps(sync);
    becomes({ pending: [{ mark: 'here' }, { mark: 'tapped' }] });
    vi.advanceTimersByTime(3_600_000);
    expect(between.isNow).toBe(false);
    becomes({ pending: [{ mark: 'here' }] });
    expect(between.isNow).toBe(true);
  });

  it('at a desk is three minutes after a key: half a form stands there', () => {
    const between = new BetweenTaps(screen('desk').sync);
    dispatchEvent(new Event('keydown'));
    vi.advanceTimersByTime(120_000);
    expect(between.isNow).toBe(false);
    vi.advanceTimersByTime(61_000);
    expect(between.isNow).toBe(true);
  });
});

/** A browser's service workers, moved by hand. */
function workersOf(controller: object | null) {
  const workers = Object.assign(new EventTarget(), { controller });
  const found = Object.assign(new EventTarget(), {
    waiting: null as { postMessage(word: string): void } | null,
    installing: null as (EventTarget & { state: string }) | null,
    update: vi.fn(async () => {}),
  });
  const said: string[] = [];
  const register = vi.fn(async () => found);
  return {
    container: Object.assign(workers, { register }) as unknown as ServiceWorkerContainer,
    found,
    said,
    newerIsThere() {
      const installing = Object.assign(new EventTarget(), { state: 'installing' });
      found.installing = installing;
      found.dispatchEvent(new Event('updatefound'));
      installing.state = 'installed';
      found.waiting = { postMessage: (word) => said.push(word) };
      installing.dispatchEvent(new Event('statechange'));
    },
    tookOver: () => workers.dispatchEvent(new Event('controllerchange')),
  };
}

describe('a screen of an older version', () => {
  async function opened(controller: object | null) {
    const { sync, becomes } = screen();
    const workers = workersOf(controller);
    const reload = vi.fn();
    const between = new BetweenTaps(sync);
    await keepShell(sync, { workers: workers.container, between, reload });
    return { ...workers, becomes, reload };
  }

  it('goes over to the newer one between taps, never during one', async () => {
    const { newerIsThere, tookOver, said, reload } = await opened({});
    dispatchEvent(new Event('pointerdown'));
    newerIsThere();
    await vi.advanceTimersByTimeAsync(7000);
    expect(said).toEqual([]);
    await vi.advanceTimersByTimeAsync(3000);
    expect(said).toEqual(['take over']);
    dispatchEvent(new Event('pointerdown'));
    tookOver();
    await vi.advanceTimersByTimeAsync(7000);
    expect(reload).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(3000);
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('is not loaded anew when the first worker takes over what has no older version', async () => {
    const { newerIsThere, tookOver, said, reload } = await opened(null);
    newerIsThere();
    tookOver();
    await vi.advanceTimersByTimeAsync(60_000);
    expect([said, reload.mock.calls]).toEqual([[], []]);
  });

  it('looks for a newer one when the hub is back, and else every hour', async () => {
    const { found, becomes } = await opened({});
    becomes({ isUp: false });
    becomes({ isUp: true });
    await vi.advanceTimersByTimeAsync(10_000);
    expect(found.update).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(3_600_000);
    expect(found.update).toHaveBeenCalledTimes(2);
  });
});

describe('a screen whose hub speaks another version', () => {
  function kept(newer: { state: string } | null) {
    const said: string[] = [];
    const worker = newer && Object.assign(new EventTarget(), newer);
    const post = (word: string) => {
      said.push(word);
      Object.assign(worker ?? {}, { state: 'activated' });
      worker?.dispatchEvent(new Event('statechange'));
    };
    Object.assign(worker ?? {}, { postMessage: post });
    const unregister = vi.fn(async () => true);
    const found = { update: async () => {}, installing: worker, waiting: null, unregister };
    const deleted: string[] = [];
    vi.stubGlobal('caches', {
      keys: async () => ['coalface shell one'],
      delete: async (name: string) => deleted.push(name),
    });
    Object.defineProperty(navigator, 'serviceWorker', {
      configurable: true,
      value: { getRegistration: async () => found },
    });
    return { worker, said, unregister, deleted };
  }

  it('fetches the newer files before it is loaded anew', async () => {
    const { worker, said, unregister } = kept({ state: 'installing' });
    const reload = vi.fn();
    const going = renew(reload);
    await vi.advanceTimersByTimeAsync(100);
    expect([said, reload.mock.calls.length]).toEqual([[], 0]);
    Object.assign(worker ?? {}, { state: 'installed' });
    worker?.dispatchEvent(new Event('statechange'));
    await going;
    expect([said, reload.mock.calls.length]).toEqual([['take over'], 1]);
    expect(unregister).not.toHaveBeenCalled();
  });

  it.each([
    ['finds none', null],
    ['cannot get them', { state: 'redundant' }],
  ])('throws away what it keeps where it %s, and asks the hub', async (_why, newer) => {
    const { unregister, deleted } = kept(newer);
    const reload = vi.fn();
    await renew(reload);
    expect(unregister).toHaveBeenCalledTimes(1);
    expect(deleted).toEqual(['coalface shell one']);
    expect(reload).toHaveBeenCalledTimes(1);
  });
});

describe('the glass', () => {
  it('is kept lit anew when the device let it go, and not twice', async () => {
    const held = { released: false };
    const request = vi.fn(async () => held as WakeLockSentinel);
    keepAwake({ request });
    await vi.advanceTimersByTimeAsync(0);
    document.dispatchEvent(new Event('visibilitychange'));
    await vi.advanceTimersByTimeAsync(0);
    expect(request).toHaveBeenCalledTimes(1);
    held.released = true;
    document.dispatchEvent(new Event('visibilitychange'));
    await vi.advanceTimersByTimeAsync(0);
    expect(request).toHaveBeenCalledTimes(2);
  });

  it('is asked for again at a touch where the device said no', async () => {
    const request = vi.fn(() => Promise.reject(new DOMException('low battery')));
    keepAwake({ request });
    await vi.advanceTimersByTimeAsync(0);
    dispatchEvent(new Event('pointerdown'));
    await vi.advanceTimersByTimeAsync(0);
    expect(request).toHaveBeenCalledTimes(2);
  });

  it('is char at night and paper by day, by the kitchen’s clock', () => {
    let now = Date.UTC(2026, 10, 28, 1, 30);
    let zone: string | null = null;
    nightByClock({ nowMs: () => now, zone: () => zone });
    expect(document.documentElement.dataset['ground']).toBeUndefined();
    // Half past seven in the evening there; a half-hour later it is night.
    zone = 'America/Chicago';
    vi.advanceTimersByTime(60_000);
    expect(document.documentElement.dataset['ground']).toBe('paper');
    now += 1_800_000;
    vi.advanceTimersByTime(60_000);
    expect(document.documentElement.dataset['ground']).toBe('night');
  });
});
