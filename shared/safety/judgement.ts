import type { Celsius, Seconds } from '../kernel/index.ts';
import type { Amount, PrintedTemp, PrintedTime } from './printed.ts';
import { amountOf, degreesIn, secondsOf, tempIn, timeIn } from './printed.ts';
import type { Profile, Which } from './profile.ts';
import { rowsOf } from './profile.ts';
import type { CorrectiveAction, LimitOf, Row, Rule } from './row-schema.ts';

/** What was found beside what is asked, in the unit of the limit; null where no number says it. */
export type Miss = { readonly measured: Amount | null; readonly limit: Amount | null };

/** A limit that was not kept, or that this profile has not set, with what may be done now. */
export type Broken = Miss & {
  readonly ok: false;
  readonly row: Row;
  readonly correctiveActions: readonly CorrectiveAction[];
};

/** A rule refuses by itself; a broken row that only warns lets the food pass and is named. */
export type Judgement = { readonly ok: true; readonly warnings: readonly Broken[] } | Broken;

/**
 * Whether a rule is kept: every row that concerns this kind must be, and a row without a limit is
 * not.
 * @param miss says by how much one limit is missed, or null if it is kept
 */
export function judge<R extends Rule>(
  profile: Profile,
  rule: R,
  miss: (limit: LimitOf<R>) => Miss | null,
  which: Which<R> = {},
): Judgement {
  const rows = rowsOf(profile, rule, which);
  const broken = rows.flatMap((row): Broken[] => {
    const missed = row.limit === null ? unset : miss(row.limit as LimitOf<R>);
    return missed === null ? [] : [breaking(row, missed)];
  });
  return broken.find(({ row }) => row.severity === 'refuse') ?? { ok: true, warnings: broken };
}

/** A row that was missed, with what it allows to be done. */
export function breaking(row: Row, { measured, limit }: Miss): Broken {
  return { ok: false, row, measured, limit, correctiveActions: row.corrective };
}

const unset: Miss = { measured: null, limit: null };

/** Missed without a number: the thing itself is not allowed. */
export const notAllowed: Miss = unset;

/** Kept only if all are: the first that refuses speaks, and all that warn are named. */
export function allOf(judgements: readonly Judgement[]): Judgement {
  const refused = judgements.find(({ ok }) => !ok);
  if (refused !== undefined) return refused;
  return { ok: true, warnings: judgements.flatMap((one) => (one.ok ? one.warnings : [])) };
}

/** By how much food is colder than a limit, which the instrument's error in kelvins moves up. */
export function tooCold(limit: PrintedTemp, temp: Celsius, errorK = 0): Miss | null {
  const { value, unit } = amountOf(limit);
  const measured = tempIn(unit, temp);
  const asked = value + degreesIn(unit, errorK);
  return measured.value >= asked ? null : { measured, limit: { value: asked, unit } };
}

/** By how much food is warmer than a limit, which the instrument's error in kelvins moves down. */
export function tooWarm(limit: PrintedTemp, temp: Celsius, errorK = 0): Miss | null {
  const { value, unit } = amountOf(limit);
  const measured = tempIn(unit, temp);
  const asked = value - degreesIn(unit, errorK);
  return measured.value <= asked ? null : { measured, limit: { value: asked, unit } };
}

/** By how much a stay is shorter than it must be. Clocks show no parts of a second. */
export function tooShort(limit: PrintedTime, stay: Seconds): Miss | null {
  if (Math.round(stay) >= secondsOf(limit)) return null;
  const asked = amountOf(limit);
  return { measured: timeIn(asked.unit, stay), limit: asked };
}

/**
 * By how much a time is longer than it may be. Limits in hours and days are held by the minute,
 * since that is how kitchens note them; shorter ones by the second.
 */
export function tooLong(limit: PrintedTime, elapsed: Seconds): Miss | null {
  const asked = amountOf(limit);
  const noted = asked.unit === 'h' || asked.unit === 'd' ? 60 : 1;
  if (Math.round(elapsed / noted) * noted <= secondsOf(limit)) return null;
  return { measured: timeIn(asked.unit, elapsed), limit: asked };
}
