import { beforeEach, describe, expect, it } from 'vitest';
import { strayRefusal } from '../../../client/shell/refusals.ts';
import type { KeptTap, Sync } from '../../../client/sync/index.ts';
import type { CommandId, TaskId } from '../../../shared/kernel/index.ts';
import { isOvertaken } from '../../../shared/view/index.ts';
import { type Say, sayRefusal } from '../../../shared/words/index.ts';
import { stationView } from '../fixtures.ts';
import { Staged, type StagedHub, type StagedTime } from './staged.ts';

const [square, rub, slice] = ['square', 'rub', 'slice'].map((step) => `ribs-1/${step}` as TaskId);

const english: Say = {
  ...{ language: 'en', zone: 'UTC', clock: '24 h' },
  ...{ temperature: '°C', weight: 'kg' },
};
const spanish: Say = { ...english, language: 'es' };

let time: StagedTime;
let hub: StagedHub;
let disk: Map<CommandId, KeptTap>;
let screen: Staged['screen'];

beforeEach(() => {
  const staged = new Staged();
  ({ time, hub, disk } = staged);
  screen = (outbox) => staged.screen(outbox);
});

/** The first view on a link of a hub with this log. */
async function comes(log: string, seq = 40, day = '2026-11-25'): Promise<void> {
  hub.up();
  await time.pass(0);
  const epoch = `opening of ${log}`;
  hub.listener?.view({
    ...{ epoch, seq, of: { log, day } },
    view: { ...stationView, seq, at: hub.now },
  });
  await time.pass(0);
}

/** As the hub does with what is of another log than its own. */
function holds(log: string): void {
  hub.answer = ({ of }) =>
    of && of.log !== log
      ? { ok: false, refusal: { rule: 'another-day', taps: 1 } }
      : { ok: true, seq: 41 };
}

/** A screen that was left with three taps by the hub of a demo. */
async function left(): Promise<Sync> {
  const sync = screen();
  await comes('a demo');
  hub.down();
  for (const task of [square, rub, slice]) sync.tap({ kind: 'start', task: task as TaskId });
  await time.pass(0);
  hub.received.length = 0;
  return sync;
}

const taken = () => hub.received.filter(({ of }) => of?.log === 'another').length;

describe('taps that were made on a day of another log', () => {
  it('are not laid over the day of this one, and are said in one line', async () => {
    const sync = await left();
    expect(sync.state.pending).toHaveLength(3);
    holds('another');
    await comes('another', 7);
    expect(sync.state.pending).toEqual([]);
    expect(sync.state.refused.map(({ refusal }) => refusal)).toEqual([
      { rule: 'another-day', taps: 3 },
    ]);
    const [refused] = sync.state.refused;
    const said = (say: typeof english) => refused && sayRefusal(refused.refusal, say);
    expect(said(english)).toBe('3 taps were for another day than the hub’s: not done.');
    expect(said(spanish)).toMatch(/^3 toques eran de otro día/);
  });

  it('hang on no line of this day, though it has work of the same name', async () => {
    const sync = await left();
    holds('another');
    await comes('another', 7);
    const stray = strayRefusal(sync.state, [square, rub] as TaskId[], english);
    expect(stray?.title).toMatch(/^Tap at /);
    const [refused] = sync.state.refused;
    const { view } = sync.state;
    expect(refused && view && isOvertaken(refused, view)).toBe(false);
  });

  it('are not asked about again and again, and what is tapped now goes its way', async () => {
    const sync = await left();
    holds('another');
    await comes('another', 7);
    await time.pass(20_000);
    const before = hub.received.length;
    sync.tap({ kind: 'start', task: rub as TaskId });
    await time.pass(0);
    expect(hub.received.slice(before).map(({ of }) => of?.log)).toEqual(['another']);
    expect(disk.size).toBe(3);
  });

  it('wait on the disk, also for the next page, till somebody has read of them', async () => {
    (await left()).close();
    holds('another');
    const next = screen();
    await comes('another', 7);
    expect(next.state.pending).toEqual([]);
    expect(next.state.refused).toMatchObject([{ refusal: { taps: 3 } }]);
    for (const { command } of next.state.refused) next.seen(command.id);
    await time.pass(0);
    expect(next.state.refused).toEqual([]);
    expect(disk.size).toBe(0);
    expect(taken()).toBe(0);
  });

  it('go to their own log when its hub is back, in their order', async () => {
    const sync = await left();
    holds('another');
    await comes('another', 7);
    hub.down();
    holds('a demo');
    hub.received.length = 0;
    await comes('a demo');
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1', 'tap-2', 'tap-3']);
    expect(sync.state.refused).toEqual([]);
    expect(disk.size).toBe(0);
  });

  it('do not stay laid over a shorter log that another hub answered them for', async () => {
    const sync = screen();
    holds('a demo');
    await comes('a demo');
    sync.tap({ kind: 'start', task: square as TaskId });
    await time.pass(0);
    expect(sync.state.pending).toHaveLength(1);
    hub.down();
    await comes('another', 7);
    expect(sync.state.pending).toEqual([]);
    expect(sync.state.refused).toEqual([]);
  });
});

describe('a hub that was started anew with the log it had', () => {
  it('gets what was tapped meanwhile', async () => {
    const sync = await left();
    await comes('a demo', 45);
    expect(hub.received).toHaveLength(3);
    expect(sync.state.refused).toEqual([]);
  });
});

describe('a tap that the hub has no day for any more', () => {
  it('is told as one of another day, and is not asked about again and again', async () => {
    const sync = await left();
    hub.answer = () => ({ ok: false, refusal: { rule: 'another-day', taps: 1 } });
    await comes('a demo', 60, '2026-11-26');
    await time.pass(20_000);
    expect(hub.received).toHaveLength(3);
    expect(sync.state.pending).toEqual([]);
    expect(sync.state.refused).toMatchObject([{ refusal: { rule: 'another-day', taps: 3 } }]);
  });
});
