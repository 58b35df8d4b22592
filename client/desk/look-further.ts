import type {
  CookPlan,
  PlanConflict,
  PlanNearest,
  PlanTried,
} from '../../shared/protocol/index.ts';
import type { PlanDoors } from './plan-doors.ts';

/** What is found about a typed plan after the first answer; null while it is looked for. */
export type Further = {
  /** What would fit of a plan that does not. */
  readonly nearest: PlanNearest['nearest'];
  /** Which few things of it cannot all be. */
  readonly conflict: PlanConflict['conflict'];
  /** A better plan than the first. */
  readonly better: PlanTried | null;
  readonly isBettering: boolean;
};

export const NOTHING_YET: Further = {
  nearest: null,
  conflict: null,
  better: null,
  isBettering: false,
};

/** A better plan is looked for in so many steps, first soon and then further. */
const STEPS = [200, 2_000];

type Looking = {
  readonly doors: PlanDoors;
  /** Whether it still is what is typed. */
  readonly isStill: () => boolean;
  /** All that is found so far. */
  readonly tell: (further: Further) => void;
};

/** Looks further, one thing after the other, until something else is typed. */
export async function lookFurther(asked: CookPlan, { fits }: PlanTried, looking: Looking) {
  if (!fits) await lookForWhatFits(asked, looking);
  else await lookForBetter(asked, looking);
}

async function lookForWhatFits(asked: CookPlan, { doors, isStill, tell }: Looking): Promise<void> {
  const near = await doors.nearest(asked);
  if (!isStill()) return;
  const nearest = near.ok ? near.nearest : null;
  tell({ ...NOTHING_YET, nearest });
  const found = await doors.conflict(asked);
  if (isStill() && found.ok) tell({ ...NOTHING_YET, nearest, conflict: found.conflict });
}

async function lookForBetter(asked: CookPlan, { doors, isStill, tell }: Looking): Promise<void> {
  let better: PlanTried | null = null;
  for (const steps of STEPS) {
    tell({ ...NOTHING_YET, better, isBettering: true });
    const answer = await doors.better(asked, steps);
    if (!isStill()) return;
    if (answer.ok && answer.fits) better = answer;
    tell({ ...NOTHING_YET, better });
    if (!answer.ok || !answer.better || answer.better.isBest) return;
  }
}
