import type { Appended, Batch, Entry, EventLog } from '../../server/store/index.ts';
import type { Life } from './life.ts';

/** How the disk behind a log fares just now. */
export type DiskMood = 'well' | 'full' | 'keeps and fails';

/** The disk would not have it. Whether it was kept all the same, the error does not say. */
export class DiskTrouble extends Error {
  override readonly name = 'DiskTrouble';
}

export type MortalParts = {
  readonly life: Life;
  /** Reached between any two things that the log is asked to do; here the process may die. */
  readonly step: (name: string) => Promise<void>;
  readonly mood: () => DiskMood;
};

/** A log as a process has it that may die at any moment of using it, on a disk that may fill up. */
export function mortalLog(log: EventLog, { life, step, mood }: MortalParts): EventLog {
  async function between<T>(name: string, work: () => Promise<T>): Promise<T> {
    await step(`before ${name}`);
    const done = await work();
    await step(`after ${name}`);
    return done;
  }

  async function append(batch: Batch): Promise<Appended> {
    if (mood() === 'full') throw new DiskTrouble('the disk is full');
    const appended = await log.append(batch);
    if (mood() === 'keeps and fails') throw new DiskTrouble('the disk gave no answer');
    return appended;
  }

  async function* read(fromSeq: number): AsyncGenerator<Entry> {
    await step('before reading');
    yield* log.read(fromSeq);
  }

  return {
    claim: (epoch) => life.during(between('claiming', () => log.claim(epoch))),
    append: (batch) => life.during(between('appending', () => append(batch))),
    answerTo: (command) => life.during(between('looking up', () => log.answerTo(command))),
    head: () => life.during(log.head()),
    read,
    close: () => life.during(log.close()),
  };
}
