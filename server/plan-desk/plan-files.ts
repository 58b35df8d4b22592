import type { DayState } from '../../shared/day/index.ts';
import { type CookPlan, readCookPlan } from '../../shared/plan/index.ts';
import { type Language, sayTypedFault } from '../../shared/words/index.ts';
import type { DayFiles } from '../day-files.ts';
import { readFolder } from '../folder/index.ts';
import { pacesFor } from '../paces-for.ts';
import { sayIn } from '../why-not-planned.ts';
import { typedFault } from './typed-fault.ts';

/** What plans are made from, as the folder has it now. */
export type PlanSources = {
  /** Null while the files are broken and no day runs. */
  kitchen(): Omit<DayFiles, 'cookPlan'> | null;
  /** The plan of that day, or of the one that runs. */
  planOf(day: string | null): CookPlan | null;
  readonly days: readonly string[];
  /** What somebody typed, as a plan of this kitchen; or all that is wrong with it. */
  read(
    plan: unknown,
    language: Language,
  ):
    | { readonly ok: true; readonly files: DayFiles }
    | { readonly ok: false; readonly lines: readonly string[] };
};

/** What lies in the folder, and, where that is broken, what the running day was made from. */
export function planSources(folder: string, state: () => DayState): PlanSources {
  const kitchen = () => {
    const { kitchen, catalogue, limitChanges } = readFolder(folder);
    return kitchen && catalogue && limitChanges
      ? { kitchen, catalogue, limitChanges }
      : state().plan;
  };
  return {
    kitchen,
    planOf(day) {
      const running = state().plan?.cookPlan ?? null;
      if (day === null || running?.day === day) return running;
      return readFolder(folder).plans.find((each) => each.day === day)?.plan ?? null;
    },
    get days() {
      return readFolder(folder).plans.map((each) => each.day);
    },
    read(plan, language) {
      const of = kitchen();
      if (!of) return { ok: false, lines: [] };
      const { kitchen: its, catalogue, limitChanges = [] } = of;
      const found = readCookPlan(plan, { kitchen: its, catalogue });
      if (found.ok) {
        const cookPlan = found.value;
        const paces = pacesFor(cookPlan.day, state());
        const files = { kitchen: its, catalogue, limitChanges, cookPlan, ...paces };
        return { ok: true, files };
      }
      const say = sayIn(language, its);
      const typed = { plan, catalogue, say };
      const lines = found.problems.map((fault) => sayTypedFault(typedFault(fault, typed), say));
      return { ok: false, lines };
    },
  };
}
