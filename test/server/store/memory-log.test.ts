import { describe, expect, it } from 'vitest';
import {
  LogGone,
  memoryDisk,
  openMemoryLog,
  toBytes,
  WRITE_STEPS,
  type WriteStep,
} from '../../../server/store/index.ts';
import { commandId, eventLogContract, note, oneNote } from '../../contracts/event-log.ts';

eventLogContract('a disk in memory', () => {
  const disk = memoryDisk();
  return {
    open: () => openMemoryLog(disk),
    alter: (seq) =>
      disk.damage((entries) => {
        const at = entries.findIndex((entry) => entry.seq === seq);
        const entry = entries[at];
        if (entry) entries[at] = { ...entry, bytes: toBytes({ ...note(seq), at: note(9).at }) };
      }),
    remove: (seq) =>
      disk.damage((entries) => {
        entries.splice(
          entries.findIndex((entry) => entry.seq === seq),
          1,
        );
      }),
    swap: (a, b) =>
      disk.damage((entries) => {
        const seqOf = (seq: number) => (seq === a ? b : seq === b ? a : seq);
        const swapped = entries.map((entry) => ({ ...entry, seq: seqOf(entry.seq) }));
        entries.splice(0, entries.length, ...swapped.sort((x, y) => x.seq - y.seq));
      }),
    dispose: () => {},
  };
});

const dieAt = (deadly: WriteStep) => (step: WriteStep) => {
  if (step === deadly) throw new Error('killed');
};

describe('a hub that dies in the middle of a write', () => {
  it.each(WRITE_STEPS)(
    'leaves all of the write or nothing when killed once it has %s',
    async (step) => {
      const disk = memoryDisk();
      const log = openMemoryLog(disk, dieAt(step));
      await log.claim('e1');
      await expect(log.append(oneNote(1, 'e1'))).rejects.toThrow('killed');
      const after = openMemoryLog(disk);
      const kept = step === 'committed' || step === 'synced';
      expect((await after.head()).seq).toBe(kept ? 1 : 0);
      expect(await after.answerTo(commandId('command-1'))).toEqual(
        kept ? { ok: true, seq: 1 } : null,
      );
    },
  );

  it('answers nothing any more', async () => {
    const log = openMemoryLog(memoryDisk(), dieAt('begun'));
    await log.claim('e1');
    await expect(log.append(oneNote(1, 'e1'))).rejects.toThrow('killed');
    await expect(log.answerTo(commandId('command-1'))).rejects.toThrow(LogGone);
  });
});

describe('a power cut', () => {
  it('leaves what was acknowledged', async () => {
    const disk = memoryDisk();
    const log = openMemoryLog(disk);
    await log.claim('e1');
    await log.append(oneNote(1, 'e1'));
    disk.cutPower();
    expect((await openMemoryLog(disk).head()).seq).toBe(1);
  });

  it('takes what was committed and not yet synced', async () => {
    const disk = memoryDisk();
    const log = openMemoryLog(disk, dieAt('committed'));
    await log.claim('e1');
    await expect(log.append(oneNote(1, 'e1'))).rejects.toThrow('killed');
    disk.cutPower();
    expect((await openMemoryLog(disk).head()).seq).toBe(0);
  });

  it('takes even what was acknowledged from a disk that only says it syncs', async () => {
    const disk = memoryDisk({ syncs: false });
    const log = openMemoryLog(disk);
    await log.claim('e1');
    expect(await log.append(oneNote(1, 'e1'))).toMatchObject({ ok: true });
    disk.cutPower();
    expect((await openMemoryLog(disk).head()).seq).toBe(0);
  });
});

it('keeps a command twice where the key was forgotten, for a simulation to find', async () => {
  const log = openMemoryLog(memoryDisk({ keys: 'any' }));
  await log.claim('e1');
  await log.append(oneNote(1, 'e1', 'once'));
  expect(await log.append(oneNote(2, 'e1', 'once'))).toMatchObject({ ok: true });
});
