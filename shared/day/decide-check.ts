import type { Celsius } from '../kernel/index.ts';
import { type Profile, plausibleCoreC, type Rule, rowsOf } from '../safety/index.ts';
import type { CheckIntent, CheckKind, CheckOn, CorrectiveAction } from './check-event.ts';
import type { CommandHead } from './command.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import { limitsOf } from './limits-of.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';

/**
 * A check, or what was done about one, is kept in the name of a person. A reading is kept as it was
 * taken, whether it keeps the limit or not.
 */
export function decideCheck(
  _state: DayState,
  index: PlanIndex,
  command: CommandHead & CheckIntent,
): Decision {
  const { on } = command;
  if (command.personId === null) return refuse({ rule: 'who-checked' });
  const profile = limitsOf(index.plan);
  if (!profile || !exists(index, on)) return refuse({ rule: 'nothing-to-check' });
  if (command.kind === 'correct') {
    const allowed = actionsFor(profile, on.kind);
    const { action } = command;
    if (!allowed.includes(action)) return refuse({ rule: 'correction-not-allowed', allowed });
    return happen({ kind: 'correctionRecorded', on, action });
  }
  const { tempC, thermometer } = command;
  if (tempC === null && hasReading(on.kind)) return refuse({ rule: 'reading-missing' });
  if (tempC !== null && !isPlausible(tempC)) {
    return refuse({ rule: 'impossible-temperature', tempC });
  }
  if (thermometer !== null && !knows(index, thermometer)) {
    return refuse({ rule: 'nothing-to-check' });
  }
  return happen({ kind: 'checkRecorded', on, tempC, thermometer });
}

/** Which rule of the limits speaks of a check. */
const ruleOf: Readonly<Record<CheckKind, Rule>> = {
  receiving: 'receiving',
  'end-temperature': 'end-temperature',
  'hot-hold': 'hot-hold',
  'cold-hold': 'cold-hold',
  cooling: 'cooling',
  reheat: 'reheat',
  'discard-time': 'time-control',
  'out-of-temperature': 'out-of-temperature',
  thermometer: 'thermometer',
  clean: 'clean-interval',
};

/** Whether a thermometer has to be read for it. */
const hasReading = (kind: CheckKind): boolean =>
  kind !== 'discard-time' && kind !== 'out-of-temperature' && kind !== 'clean';

/** All that the rows of its rule allow to be done. */
function actionsFor(profile: Profile, kind: CheckKind): CorrectiveAction[] {
  return [...new Set(rowsOf(profile, ruleOf[kind]).flatMap(({ corrective }) => corrective))];
}

const isPlausible = (tempC: Celsius): boolean =>
  plausibleCoreC.low <= tempC && tempC <= plausibleCoreC.high;

const knows = ({ plan }: PlanIndex, thermometer: string): boolean =>
  (plan.kitchen.thermometers ?? []).some(({ id }) => id === thermometer);

/** Whether this day has what is looked at. */
function exists(index: PlanIndex, on: CheckOn): boolean {
  const { kitchen, catalogue } = index.plan;
  switch (on.kind) {
    case 'receiving':
      return catalogue.cuts.some(({ id }) => id === on.cut);
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
      return index.batches.has(on.batch);
  }
}
