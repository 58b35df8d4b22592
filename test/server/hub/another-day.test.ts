import { describe, expect, it } from 'vitest';
import { memoryDisk } from '../../../server/store/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import type { OfDay } from '../../../shared/protocol/index.ts';
import { noteCommand, openNotes, seenLink, settle } from './setting.ts';

const refused = { ok: false, refusal: { rule: 'another-day', taps: 1 } };

/** A hub whose log has begun, one screen of it, and the day that this is shown. */
async function begun(disk = memoryDisk(), text = 'the first note') {
  const { hub, clock } = await openNotes(disk);
  const link = seenLink();
  const listener = hub.accept(link);
  void listener.command(noteCommand(text));
  await settle(clock);
  const of = must(link.views.at(-1)?.of, 'which day it is');
  const ask = async (note: string, on?: OfDay) => {
    const answer = listener.command({ ...noteCommand(note), ...(on && { of: on }) });
    await settle(clock);
    return answer;
  };
  return { hub, clock, of, ask };
}

describe('a tap that was made on a day of another log', () => {
  it('is not taken, and the same on a day of this one is', async () => {
    const [yesterday, { of, ask }] = [await begun(memoryDisk(), 'of yesterday'), await begun()];
    expect(yesterday.of.log).not.toBe(of.log);
    expect(await ask('salt', yesterday.of)).toEqual(refused);
    expect(await ask('pepper', of)).toMatchObject({ ok: true });
  });

  it('is told from one of this log also after a start anew', async () => {
    const disk = memoryDisk();
    const before = await begun(disk);
    await before.hub.close();
    const { of, ask } = await begun(disk, 'after the start');
    expect(of).toEqual(before.of);
    expect(await ask('salt', before.of)).toMatchObject({ ok: true });
  });

  it('is taken as ever from a screen that does not say which day it shows', async () => {
    const { ask } = await begun();
    expect(await ask('salt')).toMatchObject({ ok: true });
  });
});

describe('a tap that was made on the day before', () => {
  it('is not taken as one of the day that has begun since', async () => {
    const { of, ask } = await begun();
    expect(await ask('day two', of)).toMatchObject({ ok: true });
    expect(await ask('salt', of)).toEqual(refused);
    expect(await ask('salt', { ...of, day: 'day two' })).toMatchObject({ ok: true });
  });

  it('gets its answer again where it was kept while that day ran', async () => {
    const { hub, clock, of, ask } = await begun();
    const listener = hub.accept(seenLink());
    const command = { ...noteCommand('salt'), of };
    const first = listener.command(command);
    await settle(clock);
    await ask('day two', of);
    const again = listener.command(command);
    await settle(clock);
    expect(await again).toEqual(await first);
    expect(await again).toMatchObject({ ok: true });
  });
});
