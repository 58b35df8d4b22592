import {
  type AdoptedPlan,
  type DayState,
  openLive,
  type PlanOffer,
  planOffer,
} from '../../shared/day/index.ts';
import type { Instant } from '../../shared/kernel/index.ts';
import type { Bettering } from '../../shared/plan/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { makePlan, revisePlan } from '../adopt.ts';
import { betteringBy } from '../better-plan.ts';
import type { DayFiles } from '../day-files.ts';
import { IMPROVING } from '../engine.ts';
import { whyNotPlanned } from '../why-not-planned.ts';

/** A plan to be tried: on the running day, or, where that is another, for itself. */
export type DraftAsk = {
  readonly files: DayFiles;
  /** Null where the plan is not for the day that runs. */
  readonly state: DayState | null;
  readonly now: Instant;
  readonly language: Language;
  /** So many steps a better plan is looked for; left out: as many as the plan itself says. */
  readonly steps?: number;
};

export type Drafted =
  | {
      readonly fits: true;
      readonly plan: AdoptedPlan;
      /** What it does to the running day; null for another day. */
      readonly offer: PlanOffer | null;
      /** What looking for a better one came to; null where none was looked for. */
      readonly bettering: Bettering | null;
    }
  /** One sentence for each thing that does not fit, with what would. */
  | { readonly fits: false; readonly lines: readonly string[] };

/** Works a plan out and changes nothing. */
export function draft(
  { files, state, now, language, steps }: DraftAsk,
  shouldStop?: () => boolean,
): Drafted {
  const live = state?.plan ? openLive(state, now) : null;
  const no = (made: Parameters<typeof whyNotPlanned>[0]): Drafted => ({
    fits: false,
    lines: whyNotPlanned(made, files.kitchen, language),
  });
  if (!live) {
    const made = makePlan(asking(files, steps), 1, shouldStop ? { shouldStop } : {});
    return made.ok ? { ...made, fits: true, offer: null } : no(made);
  }
  const found = steps ? betteringBy(steps, shouldStop) : null;
  const made = revisePlan(files, live, found ? { better: found.better } : {});
  if (!made.ok) return no(made);
  const plan = found ? { ...made.plan, engine: IMPROVING } : made.plan;
  const offer = planOffer(live, plan, new Set<string>(made.planned));
  return { fits: true, plan, offer, bettering: found?.told() ?? null };
}

/**
 * A plan that is not under way says itself how far it is bettered: so the day that opens from its
 * file goes by the very plan that was taken.
 */
function asking(files: DayFiles, steps: number | undefined): DayFiles {
  if (steps === undefined) return files;
  const { betterSteps: _before, ...cookPlan } = files.cookPlan;
  return { ...files, cookPlan: steps > 0 ? { ...cookPlan, betterSteps: steps } : cookPlan };
}
