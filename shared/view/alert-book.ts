import type { Instant, PersonId } from '../kernel/index.ts';
import { minutes } from '../kernel/index.ts';
import type { Alert } from './alerts.ts';

/** A sound, or a glance that is asked for: one person, one moment, so many causes at once. */
export type Ring = {
  readonly who: PersonId;
  readonly name: string;
  readonly at: Instant;
  readonly causes: number;
};

/** What has been heard of alerts so far; each look at them makes the next. */
export type AlertBook = {
  readonly since: Instant;
  /** By person and cause. */
  readonly standing: ReadonlyMap<string, Standing>;
  /** Those of the last hour and a little, the newest last. */
  readonly rings: readonly Ring[];
};

type Standing = { readonly from: Instant; readonly last: Instant; readonly isTold: boolean };

/** What a person is shown: what comes first, and how much else waits behind it. */
export type AlertNotice = { readonly first: Alert; readonly more: number };

/** How often somebody was called, and how close together at the most. */
export type AlertRate = {
  readonly name: string;
  readonly lastHour: number;
  readonly mostInTenMin: number;
};

/** What was only worked out and is gone again sooner was never one: a re-timing may come and go. */
const SETTLES_MS = 20_000;
/** What is done and comes back within this time is the same trouble (judged). */
const RESTS_MS = minutes(10) * 1000;
/**
 * For each person one call in ten minutes in the long run, and two in any ten minutes at the most:
 * what ISA-18.2 and EEMUA 191 take for acceptable, and for the most that can be managed (both are
 * paid standards, as told second-hand).
 */
const EVERY_MS = minutes(10) * 1000;
const MOST = 2;
const HOUR_MS = minutes(60) * 1000;

/** Before anything was heard. */
export const emptyBook = (now: Instant): AlertBook => ({
  since: now,
  standing: new Map(),
  rings: [],
});

const nameOf = ({ who, cause }: Pick<Alert, 'who' | 'cause'>) => `${who} ${cause}`;

/** What somebody or a thermometer said presses: no re-timing takes it back. */
const presses = ({ asks }: Alert) => asks.kind !== 'check' && asks.kind !== 'late';

/**
 * One more look at what needs a hand. A person is called at once to what presses, and to what else
 * is new when it has stood for a moment, once for all that stands then; where they were called
 * often enough it joins what stands, and is told with the next call if it still stands then. Nobody
 * has to say that they heard: what is done is gone by itself.
 */
export function heed(book: AlertBook, alerts: readonly Alert[], now: Instant): AlertBook {
  const standing = new Map([...book.standing].filter(([, { last }]) => now - last < RESTS_MS));
  for (const alert of alerts) {
    const before = standing.get(nameOf(alert));
    standing.set(nameOf(alert), {
      from: before?.from ?? now,
      last: now,
      isTold: before?.isTold ?? false,
    });
  }
  const rings = book.rings.filter(({ at }) => now - at < HOUR_MS + MOST * EVERY_MS);
  for (const [who, own] of byPerson(alerts)) {
    const isDue = own.some((alert) => {
      const { from = now, isTold = false } = standing.get(nameOf(alert)) ?? {};
      return !isTold && (presses(alert) || now - from >= SETTLES_MS);
    });
    if (!isDue || callsLeft(rings, who, now) < 1) continue;
    const names = new Set(own.map(nameOf));
    rings.push({ who, name: own[0]?.name ?? '', at: now, causes: names.size });
    for (const name of names) {
      const each = standing.get(name);
      if (each) standing.set(name, { ...each, isTold: true });
    }
  }
  return { ...book, standing, rings };
}

/** How many calls a person may still get: one comes back in ten minutes, up to two. */
function callsLeft(rings: readonly Ring[], who: PersonId, now: Instant): number {
  let left = MOST;
  let seen: number | null = null;
  for (const { at } of rings.filter((ring) => ring.who === who)) {
    left = Math.min(MOST, left + (seen === null ? 0 : (at - seen) / EVERY_MS)) - 1;
    seen = at;
  }
  return seen === null ? left : Math.min(MOST, left + (now - seen) / EVERY_MS);
}

/** One for each person who is wanted; what comes from one cause counts once. */
export function noticesOf(alerts: readonly Alert[]): AlertNotice[] {
  return [...byPerson(alerts).values()].flatMap((own): AlertNotice[] => {
    const [first] = own;
    return first ? [{ first, more: new Set(own.map(nameOf)).size - 1 }] : [];
  });
}

/** How often each was called in the hour before `now`; who was not is not among them. */
export function ratesOf({ rings }: AlertBook, now: Instant): AlertRate[] {
  const late = rings.filter(({ at }) => now - at < HOUR_MS);
  const names = [...new Map(late.map(({ who, name }) => [who, name]))];
  return names.map(([who, name]) => {
    const own = late.filter((ring) => ring.who === who);
    const near = own.map(({ at }) => own.filter((o) => o.at >= at && o.at - at < EVERY_MS).length);
    return { name, lastHour: own.length, mostInTenMin: Math.max(...near) };
  });
}

function byPerson(alerts: readonly Alert[]): Map<PersonId, Alert[]> {
  const all = new Map<PersonId, Alert[]>();
  for (const alert of alerts) all.set(alert.who, [...(all.get(alert.who) ?? []), alert]);
  return all;
}
