import { join } from 'node:path';
import { readSqliteLog, walk } from '../../server/store/index.ts';
import type { Event } from '../../shared/day/index.ts';
import type { Deed } from './walls.ts';

/**
 * What screens have brought into the log of a folder, in order; the chain is verified on the way.
 */
export async function keptFromScreens(folder: string): Promise<Event[]> {
  const log = readSqliteLog(join(folder, 'log.sqlite'));
  const events: Event[] = [];
  const { broken } = await walk(log, (event) => events.push(event));
  await log.close();
  if (broken) throw new Error(`the chain breaks at ${broken.seq}`);
  return events.filter(({ screenId }) => screenId !== null);
}

/** The deeds among them, named as the walls name them. */
export function deedsIn(events: readonly Event[], titles: ReadonlyMap<string, string>): Deed[] {
  return events.flatMap((event): Deed[] => {
    if (event.kind === 'slotsMoved') return [{ kind: event.kind, title: '' }];
    if (!('task' in event) || event.task === null) return [];
    return [{ kind: event.kind, title: titles.get(event.task) ?? event.task }];
  });
}
