import { describe, expect, it } from 'vitest';
import { fromBytes, memoryDisk } from '../../../server/store/index.ts';
import type { PersonId } from '../../../shared/kernel/index.ts';
import type { ScreenLink } from '../../../shared/protocol/index.ts';
import { noteCommand, openNotes, seenLink, settle, trim } from './setting.ts';

describe('whoever is known to be at a screen', () => {
  it('did what is asked there and names nobody; a name that is given stands', async () => {
    const disk = memoryDisk();
    const { hub, clock } = await openNotes(disk);
    const listener = hub.accept(seenLink(trim, 'with-mara'));
    void listener.command(noteCommand('salt'));
    void listener.command({ ...noteCommand('wood'), personId: 'theo' as PersonId });
    await settle(clock);
    const people = disk.entries().map(({ bytes }) => {
      const read = fromBytes(bytes);
      return read.ok ? read.event.personId : null;
    });
    expect(people).toEqual(['mara', 'theo']);
  });
});

describe('whoever attends to the screens', () => {
  it('is told of each that is shown the day and when it goes, and of no other', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    void hub.accept(seenLink(trim, 'on')).command(noteCommand('without off'));
    await settle(clock);
    const heard: string[] = [];
    const hear = (what: string) => (link: ScreenLink) =>
      void heard.push(`${link.hello.screenId} ${what}`);
    hub.attend({ come: hear('comes'), gone: hear('goes') });
    const [turnedAway, taken] = ['off', 'wall'].map((name) => hub.accept(seenLink(trim, name)));
    for (const listener of [turnedAway, taken, taken]) listener?.gone();
    expect(heard).toEqual(['wall comes', 'wall goes']);
  });

  it('keeps no screen from its day by stumbling', async () => {
    const { hub, reports } = await openNotes(memoryDisk());
    const stumble = () => {
      throw new Error('of the one who attends');
    };
    hub.attend({ come: stumble, gone: stumble });
    const link = seenLink();
    hub.accept(link).gone();
    expect(link.views).toHaveLength(1);
    expect(reports).toMatchObject([{ level: 'fault' }, { level: 'fault' }]);
    expect(hub.health.screens).toBe(0);
  });
});

describe('a screen that may show its face no longer', () => {
  it('is let go in the turn in which that was kept, and no other with it', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const [off, on] = [seenLink(trim, 'off'), seenLink(trim, 'on')];
    hub.accept(off);
    void hub.accept(on).command(noteCommand('without off'));
    await settle(clock);
    expect([off.isClosed, on.isClosed]).toEqual([true, false]);
    expect(off.blanks).toMatchObject([{ refusal: { rule: 'screen-revoked' } }]);
  });

  it('is told to look for its place where that was changed, though it might stay', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const [moved, other] = [seenLink(trim, 'moved'), seenLink(trim, 'other')];
    hub.accept(moved);
    void hub.accept(other).command(noteCommand('moved goes to trim and mix'));
    await settle(clock);
    expect([moved.isClosed, other.isClosed]).toEqual([true, false]);
    expect(moved.blanks).toMatchObject([{ refusal: { rule: 'screen-elsewhere' } }]);
    // It comes again with a tap that it has not sent yet, and is heard.
    const again = seenLink(trim, 'moved');
    hub.accept(again);
    expect([again.isClosed, again.views.length]).toEqual([false, 1]);
  });

  it('comes again and is told why, asked nothing and shown nothing of the day', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    void hub.accept(seenLink(trim, 'on')).command(noteCommand('without off'));
    await settle(clock);
    const again = seenLink(trim, 'off');
    const listener = hub.accept(again);
    listener.whole();
    const refusal = { rule: 'screen-revoked' };
    expect(again.blanks.map((blank) => blank.refusal)).toEqual([refusal, refusal]);
    expect(again.views).toEqual([]);
    expect(hub.health.screens).toBe(1);
    listener.gone();
    expect(hub.screens).toEqual(new Set(['on']));
  });
});
