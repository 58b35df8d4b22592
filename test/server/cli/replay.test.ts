import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSqliteLog } from '../../../server/store/index.ts';
import type { Event } from '../../../shared/day/index.ts';
import { kitchenFolder, logOfTheMorning, today, typed } from './kitchen-at-work.ts';

let folder: ReturnType<typeof kitchenFolder>;
let events: Event[];
beforeAll(async () => {
  folder = kitchenFolder();
  events = await logOfTheMorning(folder.path);
});
afterAll(() => folder.remove());

const replayed = async (...words: string[]) =>
  JSON.parse((await typed(folder.path, 'replay', '.', '--json', ...words)).said);

describe('a log that is whole', () => {
  it('tells what was done, when and by whom, what runs and what is next', async () => {
    const day = await replayed();
    expect(day).toMatchObject({ entries: events.length, whole: true, days: [today], refusals: [] });
    const ended = events.filter(({ kind }) => kind === 'taskFinished');
    expect(day.done).toHaveLength(ended.length);
    for (const event of ended) {
      if (event.kind !== 'taskFinished') continue;
      const told = day.done.find(({ id }: { id: string }) => id === event.task);
      const begun = events.find((each) => each.kind === 'taskStarted' && each.task === event.task);
      expect(told).toMatchObject({
        start: new Date(begun?.at ?? 0).toISOString(),
        end: new Date(event.at).toISOString(),
        by: event.personId,
      });
    }
    const started = events.filter(({ kind }) => kind === 'taskStarted').length;
    const atWork = day.running.filter(({ kind }: { kind: string }) => kind === 'hands');
    expect(atWork).toHaveLength(started - ended.length);
    expect(day.next.length).toBeGreaterThan(10);
  });

  it('tells it to a person too', async () => {
    const { exit, complaints, said } = await typed(folder.path, 'replay', '.');
    expect({ exit, complaints }).toEqual({ exit: 0, complaints: [] });
    expect(said).toContain(`The log is whole: ${events.length} entries, of ${today}.`);
    expect(said).toMatch(/^Done\n {2}\d+:\d\d pm +\d+:\d\d pm +\w+ +Take briskets out/m);
    expect(said).toMatch(/^Running$/m);
    expect(said).toMatch(/^Next$/m);
    expect(said).toMatch(/^ {2}\d+:\d\d am +2\d\d °F +Smoker A/m);
  });

  it('is read while a hub writes to it, as it stood at one moment', async () => {
    const log = openSqliteLog(join(folder.path, 'log.sqlite'));
    await log.claim('another-hub');
    expect(await replayed()).toMatchObject({ whole: true, entries: events.length });
    await log.close();
  });

  it('is left as it is', async () => {
    const bytes = readFileSync(join(folder.path, 'log.sqlite'));
    await replayed();
    expect(readFileSync(join(folder.path, 'log.sqlite')).equals(bytes)).toBe(true);
    expect(readdirSync(folder.path)).not.toContain('holder.json');
  });

  it('is asked for a day that it does not tell of', async () => {
    const { exit, complaints } = await typed(folder.path, 'replay', '.', '--day', '2026-03-05');
    expect({ exit, complaints }).toEqual({
      exit: 1,
      complaints: [`The log tells nothing of 2026-03-05; it tells of ${today}.`],
    });
  });
});

describe('a log that is broken', () => {
  it('is named with the entry at which it breaks, and told up to there', async () => {
    const broken = kitchenFolder();
    const file = join(broken.path, 'log.sqlite');
    copyFileSync(join(folder.path, 'log.sqlite'), file);
    const db = new Database(file);
    db.exec(`drop trigger entry_stays;
      update entry set bytes = cast(replace(cast(bytes as text), '"at":', '"at": ') as blob)
      where seq = 100`);
    db.close();
    const { exit, complaints, said } = await typed(broken.path, 'replay', '.');
    expect(exit).toBe(1);
    expect(complaints).toEqual([
      'The log is broken at entry 100: it is not what was written. ' +
        'What is said of the day holds up to entry 99.',
    ]);
    expect(said).toContain('The log holds as far as it goes: 99 entries');
    expect(said).toContain('Take shoulders out and pat dry');
    const json = await typed(broken.path, 'replay', '.', '--json');
    expect(json).toMatchObject({ exit: 1, complaints: [] });
    expect(JSON.parse(json.said)).toMatchObject({
      whole: false,
      entries: 99,
      refusals: [{ rule: 'broken-log', entry: 100, why: 'altered' }],
    });
    broken.remove();
  });

  it('may be none at all', async () => {
    const empty = kitchenFolder();
    expect((await typed(empty.path, 'replay', '.')).complaints[0]).toContain('no log yet');
    empty.write('log.sqlite', 'x'.repeat(5000));
    const { exit, complaints } = await typed(empty.path, 'replay', '.');
    expect(exit).toBe(1);
    expect(complaints[0]).toContain('cannot be read as a log');
    empty.remove();
  });
});
