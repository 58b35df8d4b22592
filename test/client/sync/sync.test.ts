import { beforeEach, describe, expect, it } from 'vitest';
import type { KeptTap } from '../../../client/sync/index.ts';
import { memoryOutbox } from '../../../client/sync/index.ts';
import type { CommandId, TaskId } from '../../../shared/kernel/index.ts';
import type { Refusal } from '../../../shared/view/index.ts';
import { stationView } from '../fixtures.ts';
import { Staged, type StagedHub, type StagedTime } from './staged.ts';

const square = 'ribs-1/square' as TaskId;
const rub = 'ribs-1/rub' as TaskId;

let time: StagedTime;
let hub: StagedHub;
let disk: Map<CommandId, KeptTap>;
let screen: Staged['screen'];

beforeEach(() => {
  const staged = new Staged();
  ({ time, hub, disk } = staged);
  screen = (outbox) => staged.screen(outbox);
});

const view = (seq: number, epoch = 'first') => ({
  epoch,
  seq,
  view: { ...stationView, seq, at: hub.now },
});
const done: Refusal = { rule: 'already-done', at: stationView.at, by: null };

describe('a tap', () => {
  it('is drawn before it is kept, and kept before it is sent', async () => {
    const sync = screen();
    hub.up();
    await time.pass(0);
    sync.tap({ kind: 'start', task: square });
    expect(sync.state.pending.map(({ mark }) => mark)).toEqual(['tapped']);
    expect([disk.size, hub.received.length]).toEqual([0, 0]);
    hub.answer = null;
    await time.pass(0);
    expect(sync.state.pending.map(({ mark }) => mark)).toEqual(['here']);
    expect([disk.size, hub.received.length]).toEqual([1, 1]);
  });

  it('leaves the outbox only on the answer, and the view only when the view holds it', async () => {
    const sync = screen();
    hub.up();
    hub.listener?.view(view(40));
    hub.answer = () => ({ ok: true, seq: 41 });
    sync.tap({ kind: 'start', task: square });
    await time.pass(0);
    expect(disk.size).toBe(0);
    expect(sync.state.pending).toHaveLength(1);
    hub.listener?.view(view(41));
    expect(sync.state.pending).toEqual([]);
  });

  it('made alone is sent when the hub is back, in order, with the time of the finger', async () => {
    const sync = screen();
    hub.up();
    await time.pass(1000);
    hub.down();
    sync.tap({ kind: 'finish', task: square });
    const tappedAt = hub.now;
    await time.pass(120_000);
    sync.tap({ kind: 'start', task: rub });
    await time.pass(0);
    expect(hub.received).toEqual([]);
    hub.up();
    await time.pass(0);
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1', 'tap-2']);
    expect(Math.abs((hub.received[0]?.tappedAt ?? 0) - tappedAt)).toBeLessThan(50);
  });

  it('is sent again where no answer came, under the same id', async () => {
    const sync = screen();
    hub.up();
    hub.answer = null;
    sync.tap({ kind: 'start', task: square });
    await time.pass(4000);
    hub.answer = () => ({ ok: true, seq: 41 });
    await time.pass(4000);
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1', 'tap-1']);
    expect(disk.size).toBe(0);
  });

  it('outlives the page: the next one sends it, before its own', async () => {
    screen().tap({ kind: 'finish', task: square });
    await time.pass(0);
    const next = screen();
    next.tap({ kind: 'start', task: rub });
    hub.up();
    await time.pass(0);
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1', 'tap-2']);
  });

  it('that the hub refuses is told until somebody has read it, also by the next page', async () => {
    const sync = screen();
    hub.up();
    hub.answer = () => ({ ok: false, refusal: done });
    const { id } = sync.tap({ kind: 'finish', task: square });
    await time.pass(0);
    expect(sync.state.pending).toEqual([]);
    expect(sync.state.refused.map(({ refusal }) => refusal)).toEqual([done]);
    sync.close();
    const next = screen();
    await time.pass(0);
    expect(next.state.refused.map(({ command }) => command.id)).toEqual([id]);
    next.seen(id);
    await time.pass(0);
    expect([next.state.refused.length, disk.size]).toEqual([0, 0]);
  });

  it('is sent and stays marked as only drawn where the device cannot keep it', async () => {
    const full = { ...memoryOutbox(disk), put: () => Promise.reject(new Error('disk full')) };
    const sync = screen(full);
    sync.tap({ kind: 'start', task: square });
    await time.pass(0);
    expect(sync.state.isOutboxFailing).toBe(true);
    expect(sync.state.pending.map(({ mark }) => mark)).toEqual(['tapped']);
    hub.up();
    await time.pass(0);
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1']);
  });
});

describe('the view of a screen', () => {
  it('is the newest, whatever comes late or twice', () => {
    const sync = screen();
    hub.up();
    for (const seq of [40, 42, 41, 42]) hub.listener?.view(view(seq));
    expect(sync.state.seq).toBe(42);
  });

  it('does not go back to the epoch before a restart of the hub', () => {
    const sync = screen();
    hub.up();
    hub.listener?.view(view(40));
    hub.down();
    hub.up();
    hub.listener?.view(view(40, 'second'));
    hub.listener?.view(view(45));
    expect(sync.state.seq).toBe(40);
    hub.listener?.view(view(41, 'second'));
    expect(sync.state.seq).toBe(41);
  });

  it('follows a hub that came back with a shorter log', () => {
    const sync = screen();
    hub.up();
    hub.listener?.view(view(40));
    hub.down();
    hub.up();
    hub.listener?.view(view(12, 'restored'));
    expect(sync.state.seq).toBe(12);
  });

  it('is asked for whole when the hub has been further for two beats', async () => {
    screen();
    hub.up();
    hub.listener?.view(view(40));
    hub.beatAnswer = () => ({ t1: hub.now, t2: hub.now, seq: 41 });
    await time.pass(4500);
    expect(hub.wholes).toBeGreaterThan(0);
  });

  it('gives way to the reason where there is nothing to show', () => {
    const sync = screen();
    hub.up();
    hub.listener?.view(view(40));
    hub.listener?.blank({ epoch: 'first', seq: 41, refusal: { rule: 'no-plan' } });
    expect([sync.state.view, sync.state.blank?.rule]).toEqual([null, 'no-plan']);
  });
});

describe('a screen that hears nothing', () => {
  it('says since when, after five seconds, though the line seems up', async () => {
    const sync = screen();
    hub.up();
    await time.pass(3000);
    hub.beatAnswer = () => null;
    const last = hub.now;
    await time.pass(3500);
    expect(sync.state.aloneSince).toBeNull();
    await time.pass(1500);
    expect(Math.abs((sync.state.aloneSince ?? 0) - last)).toBeLessThan(2001);
    hub.beatAnswer = null;
    await time.pass(2000);
    expect(sync.state.aloneSince).toBeNull();
  });

  it('says nothing of a line that is back within five seconds', async () => {
    const sync = screen();
    hub.up();
    await time.pass(100);
    hub.down();
    await time.pass(4000);
    hub.up();
    await time.pass(4000);
    expect(sync.state.aloneSince).toBeNull();
  });

  it('keeps the time of the hub, not of its own wrong clock', async () => {
    time.wallErrorMs = -7_200_000;
    const sync = screen();
    hub.up();
    await time.pass(100);
    hub.down();
    await time.pass(3_600_000);
    expect(Math.abs(sync.hubNow() - hub.now)).toBeLessThan(500);
  });

  it('loads itself anew only when nothing would be lost by it', async () => {
    const full = { ...memoryOutbox(disk), put: () => Promise.reject(new Error('disk full')) };
    const sync = screen(full);
    sync.tap({ kind: 'start', task: square });
    await time.pass(0);
    hub.listener?.reload();
    expect(sync.state.isReloadDue).toBe(false);
    hub.up();
    await time.pass(0);
    expect(sync.state.isReloadDue).toBe(true);
  });
});
