import type { CutId, Instant, LotId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Profile } from '../safety/index.ts';
import { type CheckEntry, checkKey } from './check-event.ts';
import { brokenBy } from './check-limits.ts';
import { limitsOf } from './limits-of.ts';
import type { Lot } from './lot.ts';
import type { DayState } from './state.ts';

/**
 * The lots that went back to whom they came from: of those that were looked at as they came, the
 * ones of which the first that was said to be done is that. They are in no cooler, and no batch is
 * cut from them.
 */
export function sentBackIn(state: DayState): ReadonlySet<LotId> {
  const known = found.get(state.checks);
  if (known?.lots === state.happened.lots) return known.back;
  // Each lot asks all checks; on most days nothing goes back.
  const lots = state.checks.some(isSendingBack) ? [...state.happened.lots.values()] : [];
  const back = new Set(
    lots
      .filter((lot) => isOfToday(lot, state) && settled(state, lot) === 'sent-back')
      .map(({ id }) => id),
  );
  found.set(state.checks, { lots: state.happened.lots, back });
  return back;
}

type Found = { readonly lots: DayState['happened']['lots']; readonly back: ReadonlySet<LotId> };

const found = new WeakMap<DayState['checks'], Found>();

/** The lots of a cut that would go back if that were said now. */
export const unsettledOf = (state: DayState, cut: CutId, now: Instant): readonly Lot[] =>
  [...state.happened.lots.values()].filter(
    (lot) =>
      lot.cut === cut && lot.at <= now && isOfToday(lot, state) && settled(state, lot) === null,
  );

const isOfToday = ({ id }: Lot, { day }: DayState) => id.startsWith(`${day}-`);

/** What became of a lot at the door; null while nobody has said. */
function settled(state: DayState, lot: Lot): 'taken-in' | 'sent-back' | null {
  const profile = state.plan && limitsOf(state.plan);
  if (!profile) return 'taken-in';
  const key = checkKey({ kind: 'receiving', cut: lot.cut });
  let isFailed = lot.tempC !== null && isBroken(profile, lot, lot.tempC);
  if (lot.tempC !== null && !isFailed) return 'taken-in';
  for (const entry of state.checks) {
    if (entry.at < lot.at || checkKey(entry.on) !== key) continue;
    if (isSendingBack(entry)) return 'sent-back';
    if (entry.kind !== 'checkRecorded' || isFailed) continue;
    isFailed = entry.tempC !== null && isBroken(profile, lot, entry.tempC);
    if (!isFailed) return 'taken-in';
  }
  return null;
}

/** What was said to be done about a cut as it came. */
export const isSendingBack = (entry: CheckEntry): boolean =>
  entry.kind === 'correctionRecorded' && entry.action === 'reject-delivery';

const isBroken = (profile: Profile, { cut }: Lot, tempC: NonNullable<Lot['tempC']>): boolean =>
  brokenBy(profile, {
    ...{ on: { kind: 'receiving', cut }, food: null, tempC, tookS: seconds(0) },
  }) !== null;
