import type { Instant, PersonId } from '../kernel/index.ts';
import { canonical } from '../kernel/index.ts';
import type { Profile } from './profile.ts';
import type { Row } from './row-schema.ts';

/** One change of a profile: who, when, why, and the rows as they are from then on. */
export type ProfileVersion = {
  readonly profile: string;
  readonly version: number;
  readonly changedRows: readonly Row[];
  readonly reason: string;
  readonly by: PersonId;
  readonly at: Instant;
};

/** A profile as it was delivered, and every change since, oldest first. */
export type ProfileHistory = {
  readonly delivered: Profile;
  readonly changes: readonly ProfileVersion[];
};

export type ProfileChange =
  | { readonly ok: true; readonly history: ProfileHistory; readonly version: ProfileVersion }
  | { readonly ok: false; readonly why: ChangeRefusal };

/** Why a change is not taken. `other-rule`: a row may not become a row of another rule. */
export type ChangeRefusal = 'no-reason' | 'nothing-changed' | 'other-rule' | 'out-of-order';

/**
 * The profile that was in force at an instant, so that an old day keeps its old limits.
 * @example profileAt({ delivered: foodCode, changes: [] }, instant(0)).version //=> 1
 */
export function profileAt({ delivered, changes }: ProfileHistory, at: Instant): Profile {
  return changes.filter((change) => change.at <= at).reduce(withChange, delivered);
}

/** A profile with one change made to it. */
function withChange(profile: Profile, { version, changedRows }: ProfileVersion): Profile {
  const changed = new Map(changedRows.map((row) => [row.id, row]));
  const kept = profile.rows.map((row) => changed.get(row.id) ?? row);
  const known = new Set(profile.rows.map(({ id }) => id));
  return {
    ...profile,
    version,
    rows: [...kept, ...changedRows.filter(({ id }) => !known.has(id))],
  };
}

/**
 * Changes rows of a profile, or adds some; never without a reason, never before the last change.
 */
export function changeProfile(
  history: ProfileHistory,
  change: Pick<ProfileVersion, 'changedRows' | 'reason' | 'by' | 'at'>,
): ProfileChange {
  const last = history.changes.at(-1);
  if (last !== undefined && change.at < last.at) return { ok: false, why: 'out-of-order' };
  if (change.reason.trim() === '') return { ok: false, why: 'no-reason' };
  const now = history.changes.reduce(withChange, history.delivered);
  const before = new Map(now.rows.map((row) => [row.id, row]));
  const changedRows = change.changedRows.filter(
    (row) => canonical(row) !== canonical(before.get(row.id)),
  );
  if (changedRows.length === 0) return { ok: false, why: 'nothing-changed' };
  if (changedRows.some(({ id, rule }) => (before.get(id)?.rule ?? rule) !== rule)) {
    return { ok: false, why: 'other-rule' };
  }
  const version = { ...change, changedRows, profile: now.id, version: now.version + 1 };
  return { ok: true, version, history: { ...history, changes: [...history.changes, version] } };
}
