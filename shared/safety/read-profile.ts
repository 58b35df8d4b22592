import type { FileRead } from '../kernel/index.ts';
import { checkReferences, readEntry } from '../kernel/index.ts';
import type { Profile } from './profile.ts';
import { profileSchema } from './row-schema.ts';

/** Reads a kitchen's own profile, or says all that is wrong with it at once. */
export function readProfile(json: unknown): FileRead<Profile> {
  const read = readEntry(profileSchema, json);
  const problems = checkReferences(json, { ids: ['rows[].id'], references: [] });
  if (!read.ok) return { ok: false, problems: [...read.problems, ...problems] };
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: { ...read.value, version: 1 } };
}
