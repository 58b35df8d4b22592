import type { Text } from '../kernel/index.ts';
import type { Kind, LimitOf, Row, RowOf, Rule } from './row-schema.ts';

/** The limits one jurisdiction sets, in the state that one version has them. */
export type Profile = {
  readonly id: string;
  readonly name: Text;
  /** 1 as delivered, one more with each change. */
  readonly version: number;
  readonly rows: readonly Row[];
};

/** Which of the rows of a rule: those for a kind of food, and of these the ones that fit. */
export type Which<R extends Rule> = {
  readonly kind?: Kind | undefined;
  readonly only?: ((row: RowOf<R>) => boolean) | undefined;
};

/**
 * The rows of a rule, in the order of the profile. Where it has none there is one without a limit:
 * what nobody has limited is not thereby safe.
 * @example rowsOf(foodCode, 'hot-hold').map(({ id }) => id) //=> ['hot-hold']
 */
export function rowsOf<R extends Rule>(
  profile: Profile,
  rule: R,
  { kind, only = () => true }: Which<R> = {},
): RowOf<R>[] {
  const rows = profile.rows
    .filter((row): row is RowOf<R> => row.rule === rule)
    .filter(({ appliesTo }) => kind === undefined || concerns(appliesTo, kind))
    .filter(only);
  return rows.length > 0 ? rows : [emptyRow(rule)];
}

/** Whether a row is about a kind of food. @example concerns(['roast'], 'fish') //=> false */
export function concerns(appliesTo: Row['appliesTo'], kind: Kind): boolean {
  return appliesTo === 'any' || appliesTo.includes(kind);
}

/**
 * The first limit of a rule that is filled in, or null.
 * @example limitOf(foodCode, 'hot-hold')?.atLeast //=> '135 °F'
 */
export function limitOf<R extends Rule>(
  profile: Profile,
  rule: R,
  which: Which<R> = {},
): LimitOf<R> | null {
  const limits = rowsOf(profile, rule, which).map(({ limit }) => limit as LimitOf<R> | null);
  return limits.find((limit) => limit !== null) ?? null;
}

const unfilled = {
  section: 'none',
  limit: null,
  severity: 'refuse',
  source: 'not filled in',
  edition: 'none',
  sure: 'not filled in',
} as const;

function emptyRow<R extends Rule>(rule: R): RowOf<R> {
  const row = { id: rule, rule, what: { en: rule }, ...unfilled, appliesTo: 'any', corrective: [] };
  return row as unknown as RowOf<R>;
}

/**
 * The same row for a kitchen to fill in: what is limited stays, every figure and its source is
 * gone.
 */
export function emptied(row: Row): Row {
  return { ...row, ...unfilled, severity: row.severity };
}
