import type { Mix } from '../catalogue/index.ts';
import type { Kilograms, TaskId, Text } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { type Breach, type Ingoing, ingoing } from '../plan/index.ts';
import { breachOf, judgeNitrite, rubbedPpm } from '../safety/index.ts';
import type { CommandHead } from './command.ts';
import type { CureIntent } from './cure-fact.ts';
import { type Decision, happen, refuse } from './decision.ts';
import { limitsOf } from './limits-of.ts';
import { passagesOf } from './passage.ts';
import { type PlanIndex, personName } from './plan-index.ts';
import type { DayState } from './state.ts';

/** What is to be weighed for a task; null where it cures nothing. */
export type Cure = {
  readonly mix: Text;
  readonly weightKg: Kilograms;
  readonly into: (doseKg: Kilograms) => Ingoing;
};

/** The cure of a task, by the plan; null for any other. */
export function cureOf({ plan, tasks, batches }: PlanIndex, id: TaskId): Cure | null {
  const task = tasks.get(id);
  const batch = task && batches.get(task.batch);
  const mix = plan.catalogue.mixes.find((each) => each.id === task?.mix?.mix);
  if (!task?.mix || !batch || mix?.cures === undefined) return null;
  const into = (doseKg: Kilograms) =>
    must(ingoing(mix as Mix, { doseKg, greenKg: batch.trimmedKg }), mix.id);
  return { mix: mix.name, weightKg: task.mix.weightKg, into };
}

/** Curing salt is weighed once more by another person, and never beyond its limit. */
export function decideCure(
  state: DayState,
  index: PlanIndex,
  { task, weightKg, first, second }: CommandHead & CureIntent,
): Decision {
  const cure = cureOf(index, task);
  if (!cure) return refuse({ rule: 'not-a-cure' });
  const { kitchen } = index.plan;
  if (first === second) return refuse({ rule: 'cure-wants-two' });
  if (!personName(kitchen, first) || !personName(kitchen, second)) {
    return refuse({ rule: 'unknown-person' });
  }
  const { startedAt } = must(passagesOf(state).get(task), task);
  if (startedAt !== null) return refuse({ rule: 'already-started', at: startedAt, by: null });
  if (!(weightKg > 0)) return refuse({ rule: 'impossible-amount', weightKg });
  const breach = cureBreach(index, cure, weightKg);
  if (breach) return refuse({ rule: 'cure-off', mix: cure.mix, breach });
  return happen({ kind: 'cureWeighed', task, weightKg, first, second });
}

function cureBreach({ plan }: PlanIndex, { into }: Cure, doseKg: Kilograms): Breach | null {
  const limits = limitsOf(plan);
  const { method, ...rest } = into(doseKg);
  return limits && breachOf(judgeNitrite(limits, { method, ppm: rubbedPpm(rest) }));
}

/** Nothing is cured before two people have weighed for it; null where nothing keeps it. */
export function whyNotCured(state: DayState, index: PlanIndex, task: TaskId): Decision | null {
  const cure = cureOf(index, task);
  if (!cure || state.happened.cures.has(task)) return null;
  return refuse({ rule: 'cure-not-weighed', mix: cure.mix, weightKg: cure.weightKg });
}
