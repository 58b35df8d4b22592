import type { Broken } from './judgement.ts';
import { breaking } from './judgement.ts';
import type { Lethality } from './lethality.ts';
import { lethalityOf } from './lethality.ts';
import { creditsRoastTable } from './oven.ts';
import { amountOf } from './printed.ts';
import { concerns, rowsOf } from './profile.ts';
import type { LimitOf } from './row-schema.ts';
import { tables } from './tables.ts';
import type { Watch } from './watch.ts';

/** What the lethality row of a kind makes of a cook. */
export type Kill = {
  readonly lethality: Lethality;
  readonly credited: boolean | null;
  readonly met: boolean;
  readonly broken: readonly Broken[];
};

/** Null where the profile has no table for this kind: then its end temperature speaks alone. */
export function killOf(watch: Watch, fatPercent?: number): Kill | null {
  const { readings, kind, profile, oven } = watch;
  const hasRow = profile.rows.some(
    ({ rule, appliesTo }) => rule === 'lethality' && concerns(appliesTo, kind),
  );
  const [row] = rowsOf(profile, 'lethality', { kind });
  if (!hasRow || row === undefined) return null;
  const credited = creditsRoastTable(profile, kind, oven);
  if (row.limit === null) {
    const broken = [breaking(row, { measured: null, limit: null })];
    return { lethality: nothing, credited, met: false, broken };
  }
  const fitting = tablesFor(row.limit, fatPercent);
  const lethality = lethalityOf(readings, fitting, watch);
  const met = lethality.metAtS !== null && (credited !== false || lethality.wasInstant);
  const percent = { measured: share(lethality.dwell), limit: share(1) };
  return { lethality, credited, met, broken: met ? [] : [breaking(row, percent)] };
}

const nothing: Lethality = { logs: 0, neededLogs: 0, dwell: 0, wasInstant: false, metAtS: null };

const share = (of: number) => ({ value: 100 * of, unit: '%' }) as const;

/** The tables that a fat calls for; more than one where the longest of them rules. */
function tablesFor(
  { tables: listed }: LimitOf<'lethality'>,
  fatPercent = Number.POSITIVE_INFINITY,
) {
  const atMost = ({ fatAtMost }: (typeof listed)[number]) =>
    fatAtMost === undefined ? Number.POSITIVE_INFINITY : amountOf(fatAtMost).value;
  const enough = listed.filter((one) => atMost(one) >= fatPercent);
  const leanest = Math.min(...enough.map(atMost));
  return enough.filter((one) => atMost(one) === leanest).map(({ table }) => tables[table]);
}
