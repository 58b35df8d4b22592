import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { type DayState, emptyDay, fold } from '../../shared/day/index.ts';
import { type Broken, type EventLog, readSqliteLog, walk } from '../store/index.ts';
import { cannot, type Refusal, type Refused } from './refusal.ts';

/** A kitchen's log, folded as far as it holds. */
export type LogRead = {
  readonly ok: true;
  /** Entries that are as they were written. */
  readonly entries: number;
  /** Where it stops being so; null when all of it is whole. */
  readonly broken: Refusal | null;
  /** Days that it tells of, in its own order. */
  readonly days: readonly string[];
  /** The day asked for at its last entry; the latest where none was. */
  readonly state: DayState;
};

/** Whether a kitchen's folder has a log. */
export const hasLog = (folder: string) => existsSync(fileIn(folder));

const fileIn = (folder: string) => join(folder, 'log.sqlite');

/** Reads a log from its first entry on, each of which must follow from the one before. */
export async function readLog(folder: string, day?: string): Promise<LogRead | Refused> {
  const opened = open(fileIn(folder));
  if (!opened.ok) return opened;
  const days = new Set<string>();
  let now = emptyDay();
  let atDay: DayState | null = null;
  try {
    const { seq, broken } = await walk(opened.log, (event) => {
      now = fold(now, event);
      if (event.day !== null) days.add(event.day);
      if (day === undefined || event.day === day) atDay = now;
    });
    if (atDay === null && day !== undefined) return noSuchDay(day, [...days]);
    const state = atDay ?? now;
    return { ok: true, entries: seq, broken: broken && sayBroken(broken), days: [...days], state };
  } finally {
    await opened.log.close();
  }
}

function open(file: string): { readonly ok: true; readonly log: EventLog } | Refused {
  if (!existsSync(file)) {
    return cannot([{ rule: 'no-log', sentence: `${file}: there is no log yet.`, file }]);
  }
  try {
    return { ok: true, log: readSqliteLog(file) };
  } catch (fault) {
    const sentence = `${file} cannot be read as a log: ${(fault as Error).message}.`;
    return cannot([{ rule: 'unreadable-log', sentence, file }]);
  }
}

const whys: Readonly<Record<Broken['why'], string>> = {
  altered: 'it is not what was written',
  missing: 'it is missing',
  unreadable: 'it cannot be read',
  newer: 'a later version of this program wrote it',
};

function sayBroken({ seq, why }: Broken): Refusal {
  const upTo = seq > 1 ? `What is said of the day holds up to entry ${seq - 1}.` : 'Nothing holds.';
  const sentence = `The log is broken at entry ${seq}: ${whys[why]}. ${upTo}`;
  return { rule: 'broken-log', sentence, entry: seq, why };
}

function noSuchDay(day: string, days: readonly string[]): Refused {
  const known = days.length > 0 ? days.join(', ') : 'no day at all';
  const sentence = `The log tells nothing of ${day}; it tells of ${known}.`;
  return cannot([{ rule: 'no-such-day', sentence, day, days }]);
}
