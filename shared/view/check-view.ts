import type { CheckOn, Command, CorrectiveAction, FeelAsked, Live } from '../day/index.ts';
import {
  ASKED_AHEAD_S,
  breachOfCheck,
  feelAsked,
  hasReading,
  type OpenCheck,
  openChecks,
  whyOpen,
} from '../day/index.ts';
import type { Celsius, Instant, StationId, Text, ThermometerId } from '../kernel/index.ts';
import type { Breach } from '../plan/index.ts';
import { checkedThing } from './check-on.ts';
import { nameOf } from './logged-who.ts';
import { type OldFood, oldFood } from './old-food.ts';

/** Something that has to be looked at, or put right, as a screen shows it. */
export type CheckView = {
  readonly on: CheckOn;
  readonly key: string;
  readonly thing: Text;
  readonly station: Text;
  /** What its limit asks, in the digits of the row. */
  readonly asked: string | null;
  readonly atLeastC: Celsius | null;
  readonly atMostC: Celsius | null;
  readonly hasReading: boolean;
  /** What hand or eye is to find beside it, and what it finds before; absent where it is not. */
  readonly feel?: FeelAsked;
  /** Of what is held for so long at most: what goes then. */
  readonly old?: OldFood;
  readonly fromAt: Instant;
  readonly dueAt: Instant;
  readonly lateAt: Instant;
  /** The row that asks for it, with what was found; null where the route sets the limit. */
  readonly breach: Breach | null;
  /** Found wrong, when and by whom, and nobody has said what was done about it. */
  readonly failed: { readonly at: Instant; readonly by: string | null } | null;
  /** Something was done about it: a reading has to show that it helped. */
  readonly isMending: boolean;
  readonly allowed: readonly CorrectiveAction[];
  /** Those of the kitchen, the one of its station first. */
  readonly thermometers: readonly { readonly id: ThermometerId; readonly name: Text }[];
};

/**
 * What is open at these stations, or at all where none are named: what goes because it is too old
 * comes first, for somebody may yet serve it; then what is wrong.
 */
export function checksAt(live: Live, stations: ReadonlySet<StationId> | null): CheckView[] {
  const until = live.now + ASKED_AHEAD_S * 1000;
  const open = openChecks(live.state).filter(
    (check) => check.dueAt <= until && (stations === null || stations.has(check.station)),
  );
  const rank = (check: OpenCheck) =>
    isTooOld(check, live.now) ? 0 : RANKS[whyOpen(check, live.now) ?? 'open'];
  return open.sort((a, b) => rank(a) - rank(b)).map((check) => checkView(live, check));
}

const RANKS = { failed: 1, missed: 2, open: 3 } as const;

/** Food whose time is over: it is sold no more, and nothing is to be looked at. */
export const isTooOld = ({ on, lateAt }: Pick<CheckView, 'on' | 'lateAt'>, now: Instant): boolean =>
  on.kind === 'discard-time' && now >= lateAt;

function checkView(live: Live, check: OpenCheck): CheckView {
  const { kitchen } = live.index.plan;
  const { on, key, station, failed, row: _row, ...rest } = check;
  const feel = feelAsked(live.index, on);
  const old = oldFood(live, on);
  const own = (kitchen.thermometers ?? []).toSorted(
    (a, b) => Number(b.station === station) - Number(a.station === station),
  );
  return {
    ...rest,
    on,
    key,
    thing: checkedThing(live, on),
    station: kitchen.stations.find(({ id }) => id === station)?.name ?? { en: station },
    hasReading: hasReading(on.kind),
    ...(feel ? { feel } : {}),
    ...(old ? { old } : {}),
    breach: breachOfCheck(check),
    failed: failed && { at: failed.at, by: failed.by && nameOf(live, failed.by) },
    thermometers: on.kind === 'thermometer' ? [] : own.map(({ id, name }) => ({ id, name })),
  };
}

/**
 * Of these, what is to be looked at now; soon counts, for hands are washed first. What has become
 * too old since the hub was heard comes first here too.
 */
export function checksDue(checks: readonly CheckView[], now: Instant): CheckView[] {
  const due = checks.filter((check) => howOpen(check, now) !== 'later');
  return due.sort((a, b) => Number(isTooOld(b, now)) - Number(isTooOld(a, now)));
}

const SOON_MS = 600_000;

/** Whether it is wrong, was not looked at in time, is due, or comes later. */
export function howOpen(
  { failed, isMending, dueAt, lateAt }: CheckView,
  now: Instant,
): 'failed' | 'missed' | 'due' | 'later' {
  if (failed) return 'failed';
  if (isMending) return now >= lateAt ? 'missed' : 'due';
  if (now >= lateAt) return 'missed';
  return now >= dueAt - SOON_MS ? 'due' : 'later';
}

/** What this screen has looked at stands no longer; what the hub makes of it follows. */
export function layChecked(
  checks: readonly CheckView[],
  { on }: Extract<Command, { kind: 'check' | 'correct' }>,
): readonly CheckView[] {
  const key = JSON.stringify(on);
  return checks.filter((check) => JSON.stringify(check.on) !== key);
}
