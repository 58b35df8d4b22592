import { canonical } from '../kernel/index.ts';
import type { LimitsChange } from './limits-schema.ts';
import type { Profile } from './profile.ts';

/** The limits that a day is held to, and every change that led to them. */
export type HeldTo = {
  readonly id: string;
  /** That of the delivered profile, and one more with each change. */
  readonly version: number;
  readonly changes: readonly LimitsChange[];
};

/**
 * How the limits of the last day became those of the next: by no change or some. Refused:
 * `no-reason` where they differ and no entry says why, `rewritten` where an entry that was kept
 * before is gone or altered, `other-profile` where the last entry leads to another.
 */
export type LimitsStep =
  | { readonly ok: true; readonly fresh: readonly LimitsChange[] }
  | { readonly ok: false; readonly why: 'no-reason' | 'rewritten' | 'other-profile' };

/**
 * A delivered profile with the changes of a kitchen made to it; rows that were changed in another
 * profile are none of its.
 * @example profileAfter(foodCode, []).version //=> 1
 */
export function profileAfter(delivered: Profile, changes: readonly LimitsChange[]): Profile {
  const own = changes.filter(({ limits }) => limits === delivered.id);
  const rows = own.reduce((before, change) => rowsAfter(before, change), delivered.rows);
  return { ...delivered, version: delivered.version + changes.length, rows };
}

function rowsAfter(rows: Profile['rows'], { rows: changedRows }: LimitsChange): Profile['rows'] {
  const changed = new Map(changedRows.map((row) => [row.id, row]));
  const known = new Set(rows.map(({ id }) => id));
  const kept = rows.map((row) => changed.get(row.id) ?? row);
  return [...kept, ...changedRows.filter(({ id }) => !known.has(id))];
}

/** Whether limits may follow on those of the last day, and by which changes; null: the first. */
export function stepBetween(before: HeldTo | null, next: HeldTo): LimitsStep {
  const { changes, id, version } = next;
  const last = changes.at(-1);
  if (last && last.limits !== id) return { ok: false, why: 'other-profile' };
  if (before === null) return { ok: true, fresh: changes };
  const kept = changes.slice(0, before.changes.length);
  if (canonical(kept) !== canonical(before.changes)) return { ok: false, why: 'rewritten' };
  const fresh = changes.slice(kept.length);
  const isSame = id === before.id && version === before.version;
  return isSame || fresh.length > 0 ? { ok: true, fresh } : { ok: false, why: 'no-reason' };
}
