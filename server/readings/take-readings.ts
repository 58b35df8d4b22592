import { createHash } from 'node:crypto';
import {
  type DayState,
  decide,
  lookAtReading,
  type ReadingFound,
  type Refusal,
} from '../../shared/day/index.ts';
import { type CommandId, type Instant, instant, type ScreenId } from '../../shared/kernel/index.ts';
import type { SentReading } from '../../shared/protocol/index.ts';
import type { Hub } from '../hub/index.ts';

/** What became of a reading; `refusal` where the hub did not take it. */
export type Taken = { readonly found: ReadingFound; readonly refusal?: Refusal };

export type TakeReadings = (
  readings: readonly SentReading[],
  screenId: ScreenId | null,
) => Promise<readonly Taken[]>;

type ReadingHub = Pick<Hub<DayState>, 'state' | 'put'>;

/**
 * Takes readings that come from elsewhere, in order of their time, each decided and kept like a
 * tap. A probe is nobody, so they stand as sent by none. The same reading sent again is kept once.
 */
export function takeReadings(hub: ReadingHub, now: () => Instant): TakeReadings {
  return async (readings, screenId) => {
    const at = now();
    const timeOf = (said: string | null) => (said === null ? at : instant(Date.parse(said)));
    const dated = readings.map((each, index) => ({ ...each, at: timeOf(each.at), index }));
    const inOrder = [...dated].sort((a, b) => a.at - b.at || a.index - b.index);
    const taken = await Promise.all(
      inOrder.map(async (reading) => ({
        index: reading.index,
        taken: await take(hub, reading, { screenId, now: at }),
      })),
    );
    return taken.sort((a, b) => a.index - b.index).map((each) => each.taken);
  };
}

type Dated = Pick<SentReading, 'where' | 'tempC'> & { readonly at: Instant };

/** What says that nothing is kept. */
const DROPPED: readonly ReadingFound[] = [
  'duplicate',
  'from-the-future',
  'before-the-day',
  'impossible',
  'unknown-place',
  'no-plan',
];

async function take(
  hub: ReadingHub,
  { where, tempC, at }: Dated,
  { screenId, now }: { readonly screenId: ScreenId | null; readonly now: Instant },
): Promise<Taken> {
  let found: ReadingFound = 'duplicate';
  const id = idOf(where, at, tempC);
  const answer = await hub.put({
    ...{ id, personId: null, screenId, claimedAt: at },
    earliestAt: (state) => state.plan?.built.origin ?? instant(0),
    decide: (state, decidedAt) => {
      found = lookAtReading(state, { where, tempC, at }, now);
      if (DROPPED.includes(found)) return { ok: true, facts: [] };
      const head = { id, personId: null, screenId, tappedAt: at };
      return decide(state, { ...head, kind: 'reading', where, tempC }, decidedAt);
    },
  });
  return answer.ok ? { found } : { found, refusal: answer.refusal };
}

/** The same reading has the same name, so that what is sent twice is answered as before. */
function idOf(where: SentReading['where'], at: Instant, tempC: number): CommandId {
  const text = JSON.stringify([where, at, tempC]);
  return `reading-${createHash('sha256').update(text).digest('hex').slice(0, 32)}` as CommandId;
}
