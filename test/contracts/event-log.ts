import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Batch, type EventLog, toBytes, walk } from '../../server/store/index.ts';
import { EVENT_VERSION, type Event } from '../../shared/day/index.ts';
import type { CommandId, DayId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';

/** A medium that keeps a log, and the ways in which the world treats it. */
export type LogMedium = {
  open(): EventLog;
  /** Changes one stored byte of an entry. */
  alter(seq: number): void;
  remove(seq: number): void;
  /** Exchanges the numbers of two entries. */
  swap(a: number, b: number): void;
  dispose(): void;
};

export const commandId = (name: string) => name as CommandId;

/** A small event, number `seq`. */
export function note(seq: number, command = `command-${seq}`): Event {
  return {
    seq,
    version: EVENT_VERSION,
    kind: 'noteWritten',
    day: '2026-11-25' as DayId,
    at: instant(1_000 * seq),
    keptAt: instant(1_000 * seq),
    commandId: commandId(command),
    personId: null,
    screenId: null,
    text: `number ${seq}, größer`,
    task: null,
  };
}

/** One event of one command, with its answer. */
export function oneNote(seq: number, epoch: string, command = `command-${seq}`): Batch {
  const event = note(seq, command);
  return {
    expectedSeq: seq - 1,
    epoch,
    entries: [{ commandId: event.commandId, bytes: toBytes(event) }],
    answers: [{ commandId: event.commandId, answer: { ok: true, seq } }],
  };
}

async function entriesOf(log: EventLog) {
  const entries = [];
  for await (const entry of log.read(1)) entries.push(entry);
  return entries;
}

async function walked(log: EventLog) {
  const events: Event[] = [];
  return { events, ...(await walk(log, (event) => events.push(event))) };
}

/** What every event log promises, whatever it is written on. */
export function eventLogContract(name: string, newMedium: () => LogMedium) {
  describe(`the event log on ${name}`, () => {
    let medium: LogMedium;
    let log: EventLog;
    beforeEach(async () => {
      medium = newMedium();
      log = medium.open();
      await log.claim('e1');
    });
    afterEach(async () => {
      await log.close();
      medium.dispose();
    });

    async function reopen() {
      await log.close();
      log = medium.open();
    }

    describe('when it keeps', () => {
      it('gives back the very bytes, numbered from one', async () => {
        await log.append(oneNote(1, 'e1'));
        await log.append(oneNote(2, 'e1'));
        const entries = await entriesOf(log);
        expect(entries.map(({ seq }) => seq)).toEqual([1, 2]);
        expect(entries.map(({ bytes }) => Buffer.from(bytes))).toEqual(
          [note(1), note(2)].map((event) => Buffer.from(toBytes(event))),
        );
        expect((await walked(log)).events).toEqual([note(1), note(2)]);
      });

      it('keeps entries, answers and where it stands over a closing', async () => {
        await log.append(oneNote(1, 'e1'));
        const before = await log.head();
        await reopen();
        expect(await log.head()).toEqual(before);
        expect((await walked(log)).events).toEqual([note(1)]);
        expect(await log.answerTo(commandId('command-1'))).toEqual({ ok: true, seq: 1 });
      });

      it('takes several commands, and several events of one, in one batch', async () => {
        const appended = await log.append({
          expectedSeq: 0,
          epoch: 'e1',
          entries: [1, 2].map((seq) => ({
            commandId: commandId('both'),
            bytes: toBytes(note(seq, 'both')),
          })),
          answers: [
            { commandId: commandId('both'), answer: { ok: true, seq: 2 } },
            { commandId: commandId('other'), answer: { ok: false, refusal: { rule: 'no-plan' } } },
          ],
        });
        expect(appended).toMatchObject({ ok: true, head: { seq: 2 } });
        expect(await log.answerTo(commandId('other'))).toEqual({
          ok: false,
          refusal: { rule: 'no-plan' },
        });
      });

      it('keeps the answer of a command that made nothing happen', async () => {
        const refused = { ok: false, refusal: { rule: 'no-plan' } } as const;
        const answers = [{ commandId: commandId('lost'), answer: refused }];
        await log.append({ expectedSeq: 0, epoch: 'e1', entries: [], answers });
        await reopen();
        expect(await log.answerTo(commandId('lost'))).toEqual(refused);
        expect((await log.head()).seq).toBe(0);
      });

      it('knows no answer to a command it never saw', async () => {
        expect(await log.answerTo(commandId('never'))).toBeNull();
      });

      it('reads on from any entry', async () => {
        for (const seq of [1, 2, 3]) await log.append(oneNote(seq, 'e1'));
        const seqs = [];
        for await (const { seq } of log.read(2)) seqs.push(seq);
        expect(seqs).toEqual([2, 3]);
      });
    });

    describe('when it must not keep', () => {
      it('refuses a writer that does not know the last entry, and keeps nothing', async () => {
        await log.append(oneNote(1, 'e1'));
        expect(await log.append(oneNote(1, 'e1', 'late'))).toEqual({
          ok: false,
          why: 'moved',
          seq: 1,
        });
        expect(await log.answerTo(commandId('late'))).toBeNull();
        expect(await entriesOf(log)).toHaveLength(1);
      });

      it('refuses the hub that had it before another claimed it', async () => {
        await log.claim('e2');
        expect(await log.append(oneNote(1, 'e1'))).toEqual({
          ok: false,
          why: 'fenced',
          epoch: 'e2',
        });
        expect(await log.append(oneNote(1, 'e2'))).toMatchObject({ ok: true });
      });

      it('refuses a second answer to a command, and keeps nothing beside it', async () => {
        await log.append(oneNote(1, 'e1', 'once'));
        const before = await log.head();
        expect(await log.append(oneNote(2, 'e1', 'once'))).toEqual({ ok: false, why: 'doubled' });
        expect(await log.head()).toEqual(before);
        expect(await entriesOf(log)).toHaveLength(1);
        expect(await log.append(oneNote(2, 'e1'))).toMatchObject({ ok: true });
      });

      it('refuses a batch that answers one command twice', async () => {
        const { answers, ...batch } = oneNote(1, 'e1');
        const twice = { ...batch, answers: [...answers, ...answers] };
        expect(await log.append(twice)).toEqual({ ok: false, why: 'doubled' });
        expect((await log.head()).seq).toBe(0);
      });
    });

    describe('when it was damaged', () => {
      beforeEach(async () => {
        for (const seq of [1, 2, 3, 4]) await log.append(oneNote(seq, 'e1'));
        await log.close();
      });

      it('holds to its end when nothing was', async () => {
        log = medium.open();
        expect(await walked(log)).toMatchObject({ seq: 4, keptAt: 4_000, broken: null });
      });

      it('says which entry was altered, and hands on those before', async () => {
        medium.alter(3);
        log = medium.open();
        const { events, ...rest } = await walked(log);
        expect(events).toEqual([note(1), note(2)]);
        expect(rest).toEqual({ seq: 2, keptAt: 2_000, broken: { seq: 3, why: 'altered' } });
      });

      it('says which entry is missing from the middle', async () => {
        medium.remove(2);
        log = medium.open();
        expect((await walked(log)).broken).toEqual({ seq: 2, why: 'missing' });
      });

      it('says that the end was cut off', async () => {
        medium.remove(4);
        log = medium.open();
        expect((await walked(log)).broken).toEqual({ seq: 4, why: 'missing' });
      });

      it('notices two entries that changed places', async () => {
        medium.swap(2, 3);
        log = medium.open();
        expect((await walked(log)).broken).toEqual({ seq: 2, why: 'altered' });
      });
    });
  });
}
