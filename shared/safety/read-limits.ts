import type { FileFault, FileRead } from '../kernel/index.ts';
import { meant, readEntry, shown } from '../kernel/index.ts';
import { type LimitsChange, limitsFileSchema } from './limits-schema.ts';
import { profileAfter } from './profile-history.ts';
import { profiles } from './profiles.ts';

/** Reads the changes of a kitchen's limits, or says all that is wrong with them at once. */
export function readLimits(json: unknown): FileRead<readonly LimitsChange[]> {
  const read = readEntry(limitsFileSchema, json);
  if (!read.ok) return read;
  const { changes } = read.value;
  const problems = changes.flatMap((change, i) => faultsOf(change, changes.slice(0, i), i));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: changes };
}

function faultsOf(change: LimitsChange, before: readonly LimitsChange[], i: number): FileFault[] {
  const { limits, rows } = change;
  const names = profiles.map(({ id }) => id);
  const delivered = profiles.find(({ id }) => id === limits);
  if (!delivered) {
    const near = meant(limits, names);
    const allowed = `one of: ${names.join(', ')}`;
    const fault = { path: `changes[${i}].limits`, found: shown(limits), allowed };
    return [near === undefined ? fault : { ...fault, meant: near }];
  }
  const known = new Map(profileAfter(delivered, before).rows.map(({ id, rule }) => [id, rule]));
  return rows.flatMap(({ id, rule }, j) => {
    const path = `changes[${i}].rows[${j}]`;
    if (rows.findIndex((row) => row.id === id) < j) {
      return [{ path: `${path}.id`, found: shown(id), allowed: 'each row once in a change' }];
    }
    const was = known.get(id) ?? rule;
    // Else a limit would vanish under the name of another.
    const allowed = `${shown(was)}, the rule of this row`;
    return was === rule ? [] : [{ path: `${path}.rule`, found: shown(rule), allowed }];
  });
}
