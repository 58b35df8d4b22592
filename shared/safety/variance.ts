import type { Profile } from './profile.ts';
import { rowsOf } from './profile.ts';
import type { Process, RowOf } from './row-schema.ts';

/**
 * The rows by which a kitchen must ask the authority before it does any of these.
 * @example variancesOf(foodCode, ['curing']).map(({ section }) => section) //=> ['3-502.11']
 */
export function variancesOf(profile: Profile, done: readonly Process[]): RowOf<'variance'>[] {
  return done.flatMap((process) =>
    rowsOf(profile, 'variance', { only: (row) => row.process === process }),
  );
}
