import { beforeEach, describe, expect, it } from 'vitest';
import type { KeptTap, Outbox, Sync } from '../../../client/sync/index.ts';
import { memoryOutbox } from '../../../client/sync/index.ts';
import type { CommandId, TaskId } from '../../../shared/kernel/index.ts';
import { Staged, type StagedHub, type StagedTime } from './staged.ts';

const square = 'ribs-1/square' as TaskId;

let time: StagedTime;
let hub: StagedHub;
let disk: Map<CommandId, KeptTap>;
let staged: Staged;
/** What the disk does with a tap: keeps it, refuses it, or never answers. */
let mood: 'keeps' | 'is full' | 'hangs';

beforeEach(() => {
  staged = new Staged();
  ({ time, hub, disk } = staged);
  mood = 'keeps';
});

function screen(): Sync {
  const kept = memoryOutbox(disk);
  const put: Outbox['put'] = (tap) => {
    if (mood === 'is full') {
      return Promise.reject(new DOMException('full', 'QuotaExceededError'));
    }
    return mood === 'hangs' ? new Promise(() => {}) : kept.put(tap);
  };
  return staged.screen({ ...kept, put });
}

const count = (sync: Sync, done: number) => sync.tap({ kind: 'count', task: square, done });
const marks = (sync: Sync) => sync.state.pending.map(({ mark }) => mark);

describe('taps on a disk that is full for a while', () => {
  it('are said to be in the page alone, and are drawn so', async () => {
    const sync = screen();
    mood = 'is full';
    count(sync, 1);
    await time.pass(0);
    expect(sync.state).toMatchObject({ isOutboxFailing: true });
    count(sync, 2);
    await time.pass(0);
    expect([marks(sync), disk.size]).toEqual([['tapped', 'tapped'], 0]);
  });

  it('are all kept once one can be, in the order of the finger', async () => {
    const sync = screen();
    mood = 'is full';
    count(sync, 1);
    count(sync, 2);
    await time.pass(0);
    mood = 'keeps';
    count(sync, 3);
    await time.pass(0);
    expect([...disk.keys()]).toEqual(['tap-1', 'tap-2', 'tap-3']);
    expect(sync.state).toMatchObject({ isOutboxFailing: false });
    expect(marks(sync)).toEqual(['here', 'here', 'here']);
  });

  it('are sent from the page, once each, and leave nothing on the disk', async () => {
    const sync = screen();
    mood = 'is full';
    count(sync, 1);
    await time.pass(0);
    hub.up();
    await time.pass(0);
    mood = 'keeps';
    count(sync, 2);
    await time.pass(0);
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1', 'tap-2']);
    expect([disk.size, sync.state.isOutboxFailing]).toEqual([0, false]);
  });
});

describe('taps on a disk that never answers', () => {
  it('are drawn at once, said to be in the page alone, and sent', async () => {
    mood = 'hangs';
    const sync = screen();
    count(sync, 1);
    await time.pass(0);
    expect(marks(sync)).toEqual(['tapped']);
    hub.up();
    await time.pass(5_000);
    expect(hub.received.map(({ id }) => id)).toEqual(['tap-1']);
  });

  it('are said to be there also while no hub is heard', async () => {
    mood = 'hangs';
    const sync = screen();
    count(sync, 1);
    await time.pass(6_000);
    expect(sync.state).toMatchObject({ isOutboxFailing: true });
  });
});
