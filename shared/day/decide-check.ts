import type { Celsius, CutId, Instant } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';
import { plausibleCoreC } from '../safety/index.ts';
import { whyOpen } from './barred.ts';
import {
  type CheckIntent,
  type CheckOn,
  checkKey,
  type Feel,
  type FeelFound,
} from './check-event.ts';
import { hasReading } from './check-limits.ts';
import type { CommandHead } from './command.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { Fact } from './event.ts';
import { feelAsked } from './feel-asked.ts';
import { limitsOf } from './limits-of.ts';
import { openChecks } from './open-checks.ts';
import type { PlanIndex } from './plan-index.ts';
import { unsettledOf } from './sent-back.ts';
import type { DayState } from './state.ts';

/**
 * A check, or what was done about one, is kept in the name of a person. A reading is kept as it was
 * taken, whether it keeps the limit or not.
 */
export function decideCheck(
  state: DayState,
  index: PlanIndex,
  command: CommandHead & CheckIntent,
): Decision {
  const { on } = command;
  if (command.personId === null) return refuse({ rule: 'who-checked' });
  const profile = limitsOf(index.plan);
  if (!profile || !exists(state, index, command)) return refuse({ rule: 'nothing-to-check' });
  if (command.kind === 'correct') return decideCorrection(state, on, command);
  // How long it has stood no look at it changes: what is done about it is said.
  if (!hasReading(on.kind) && on.kind !== 'clean') return refuse({ rule: 'nothing-to-check' });
  const { tempC, thermometer } = command;
  if (tempC === null && hasReading(on.kind)) return refuse({ rule: 'reading-missing' });
  if (tempC !== null && !isPlausible(tempC)) {
    return refuse({ rule: 'impossible-temperature', tempC });
  }
  if (thermometer !== null && !knows(index, thermometer)) {
    return refuse({ rule: 'nothing-to-check' });
  }
  const shown = on.kind === 'clean' ? null : tempC;
  const feel = command.feel && feltAs(index, on, command.feel);
  return happen({
    ...{ kind: 'checkRecorded', on, tempC: shown, thermometer },
    ...(feel ? { feel } : {}),
  });
}

/** In the words of the step that looks at it; null where no hand is asked. */
function feltAs(index: PlanIndex, on: CheckOn, is: FeelFound): Feel | null {
  const asked = feelAsked(index, on);
  return asked && { is, words: is === 'there' ? asked.there : asked.notYet };
}

/** Only what is wrong can be put right, and only as its row allows. */
function decideCorrection(
  state: DayState,
  on: CheckOn,
  { action, tappedAt }: CommandHead & Extract<CheckIntent, { kind: 'correct' }>,
): Decision {
  const check = openChecks(state).find(({ key }) => key === checkKey(on));
  const isWrong = check && (on.kind === 'discard-time' || whyOpen(check, tappedAt) !== null);
  if (!isWrong) return refuse({ rule: 'nothing-to-correct' });
  const { allowed } = check;
  if (!allowed.includes(action)) return refuse({ rule: 'correction-not-allowed', allowed });
  const said: Fact = { kind: 'correctionRecorded', on, action };
  if (action !== 'reject-delivery' || on.kind !== 'receiving') return happen(said);
  return happen(said, ...withoutWhatWentBack(state, on.cut, tappedAt));
}

/** What went back has not come: the day is short of it, as if it had been left out. */
function withoutWhatWentBack(state: DayState, cut: CutId, now: Instant): Fact[] {
  const { deliveries, lots } = state.happened;
  const came = deliveries.get(cut);
  if (!came) return [];
  // What was counted without a lot goes back whole.
  const isOfLots = [...lots.values()].some((lot) => lot.cut === cut);
  const back = isOfLots ? unsettledOf(state, cut, now) : [came];
  const pieces = Math.max(
    0,
    back.reduce((left, gone) => left - gone.pieces, came.pieces),
  );
  const restKg = back.reduce((leftKg, gone) => leftKg - gone.weightKg, came.weightKg as number);
  const weightKg = kilograms(pieces > 0 ? Math.max(DUST_KG, restKg) : 0);
  return [{ kind: 'deliveryCame', cut, pieces, weightKg }];
}

/** What is there weighs something. */
const DUST_KG = 0.001;

const isPlausible = (tempC: Celsius): boolean =>
  plausibleCoreC.low <= tempC && tempC <= plausibleCoreC.high;

const knows = ({ plan }: PlanIndex, thermometer: string): boolean =>
  (plan.kitchen.thermometers ?? []).some(({ id }) => id === thermometer);

/** Whether this day has what is looked at. */
function exists(
  { leftovers, happened }: DayState,
  index: PlanIndex,
  { on, tappedAt }: Pick<CommandHead, 'tappedAt'> & Pick<CheckIntent, 'on'>,
): boolean {
  const { kitchen, catalogue } = index.plan;
  switch (on.kind) {
    case 'receiving': {
      // What was read before anything came is of something else.
      const { deliveries, lots } = happened;
      const came = [
        deliveries.get(on.cut),
        ...[...lots.values()].filter(({ cut }) => cut === on.cut),
      ];
      const isHere = came.some((each) => each !== undefined && each.at <= tappedAt);
      return isHere && catalogue.cuts.some(({ id }) => id === on.cut);
    }
    case 'cold-hold':
      return kitchen.coolers.some(({ id }) => id === on.cooler);
    case 'thermometer':
      return knows(index, on.thermometer);
    case 'clean': {
      const station = kitchen.stations.find(({ id }) => id === on.station);
      if (!station) return false;
      return on.table === null ? station.side === 'clean' : on.table <= station.tables;
    }
    default:
      return index.batches.has(on.batch) || leftovers.some(({ batch }) => batch === on.batch);
  }
}
