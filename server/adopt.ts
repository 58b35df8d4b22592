import { createHash } from 'node:crypto';
import type { AdoptedPlan, Live } from '../shared/day/index.ts';
import { cameOf, heldBy, shutIn, standingOf, startedIn } from '../shared/day/index.ts';
import { type BatchId, type CommandId, canonical, type Instant } from '../shared/kernel/index.ts';
import {
  type Better,
  type Bettering,
  type BuiltDay,
  betterDay,
  keepingOf,
  type PlanRefusal,
  planDay,
  revise,
} from '../shared/plan/index.ts';
import type { HeldTo } from '../shared/safety/index.ts';
import { type Conflict, construct } from '../shared/schedule/index.ts';
import { built, refused } from './built-day.ts';
import { isHeldAlike, limitsFacts, whyNotLimits } from './changed-limits.ts';
import type { DayFiles } from './day-files.ts';
import { CONSTRUCTIVE, ENGINES, IMPROVING, mustKeep, SEED } from './engine.ts';
import type { Brought } from './hub/index.ts';

export type PlanMade =
  | {
      readonly ok: true;
      readonly plan: AdoptedPlan;
      /** What looking for a better one came to; null where the files ask for none. */
      readonly bettering: Bettering | null;
    }
  /** It cannot be worked out at all. */
  | { readonly ok: false; readonly why: 'refused'; readonly refusals: readonly PlanRefusal[] }
  /** Worked out, but hands, places and time do not suffice. */
  | {
      readonly ok: false;
      readonly why: 'no-schedule';
      readonly built: BuiltDay;
      readonly conflicts: readonly Conflict[];
    };

/**
 * A trial says sooner whether there is a plan; it is none that anybody would follow. `better` goes
 * on from the first one of a running day.
 */
export type Effort = { readonly isTrial?: boolean; readonly better?: Better };

type Making = Pick<Effort, 'isTrial'> & {
  /** What the last day was held to; null where that is not asked. */
  readonly before?: HeldTo | null;
  /** Asked while a better plan is looked for. */
  readonly shouldStop?: () => boolean;
};

/**
 * Works a cook plan out into tasks and a schedule, or says why it cannot be. Where the plan asks
 * for it a better one is looked for in so many steps, so that the same files give the same plan.
 */
export function makePlan(
  files: DayFiles,
  version: number,
  { before = null, shouldStop, ...effort }: Making = {},
): PlanMade {
  const unexplained = whyNotLimits(before, files);
  if (unexplained) return refused(unexplained);
  const made = built(files);
  if (!made.ok) return made;
  const planned = planDay(made.day, construct, { seed: SEED, ...effort });
  if (!planned.ok) {
    return { ok: false, why: 'no-schedule', built: made.day, conflicts: planned.conflicts };
  }
  const { betterSteps: steps = 0 } = files.cookPlan;
  const isBettered = steps > 0 && !effort.isTrial;
  const options = { seed: SEED, steps, ...(shouldStop && { shouldStop }) };
  const found = isBettered ? betterDay(made.day, planned, ENGINES, options) : null;
  const { day, schedule } = found ?? planned;
  mustKeep(day.problem, schedule);
  const engine = found?.isBetter ? IMPROVING : CONSTRUCTIVE;
  const parts = { ...files, engine, limits: made.limits, built: day, schedule };
  const plan = { ...head(files, version), ...parts };
  return { ok: true, plan, bettering: found && toldOf(found) };
}

const toldOf = ({ before, after, aheadLeastS, weight }: Bettering): Bettering | null =>
  weight > 0 ? { before, after, aheadLeastS, weight } : null;

export type PlanRevised =
  | {
      readonly ok: true;
      readonly plan: AdoptedPlan;
      /** The batches that were planned anew. */
      readonly planned: readonly BatchId[];
    }
  | Extract<PlanMade, { ok: false }>;

/** The next version of the plan of a running day: what has started stands. */
export function revisePlan(
  files: DayFiles,
  live: Live,
  { better, ...effort }: Effort = {},
): PlanRevised {
  const { plan } = live.index;
  // A day keeps the limits that it began with, unless its kitchen names others, and says why.
  const isAlike = isHeldAlike(plan, files);
  const unexplained = isAlike ? null : whyNotLimits(heldBy(plan), files);
  if (unexplained) return refused(unexplained);
  const kept = isAlike ? plan.limits : undefined;
  const made = built(files, keepingOf(plan, files.cookPlan, startedIn(live)), kept);
  if (!made.ok) return made;
  const revision = {
    before: plan.built,
    after: made.day,
    standing: standingOf(live),
    nowS: live.nowS,
    shut: shutIn(live),
    came: cameOf(live.state, live.index),
  };
  const revised = revise(revision, construct, { seed: SEED, ...effort }, better);
  if (!revised.ok) {
    if (revised.why === 'refused') return revised;
    const { conflicts, day: round } = revised;
    return { ok: false, why: 'no-schedule', built: round, conflicts };
  }
  const { day, schedule, proof, planned } = revised;
  mustKeep(proof.problem, proof.schedule);
  const { limits } = made;
  const next = { ...head(files, plan.version + 1), ...files, limits, built: day, schedule };
  return { ok: true, plan: next, planned };
}

const head = (files: DayFiles, version: number) => ({
  version,
  engine: CONSTRUCTIVE,
  seed: SEED,
  hashes: hashesOf(files),
});

/** Hexadecimal SHA-256 over the canonical JSON of each document. */
export function hashesOf(files: DayFiles): AdoptedPlan['hashes'] {
  const { cookPlan, kitchen, catalogue, limitChanges = [] } = files;
  const three = { cookPlan: hash(cookPlan), kitchen: hash(kitchen), catalogue: hash(catalogue) };
  return limitChanges.length === 0 ? three : { ...three, limits: hash(limitChanges) };
}

/**
 * The plan as the fact that the hub is to keep, and a change of the limits beside it; the same
 * plan, brought again, is kept once. `before` is what the last day was held to.
 */
export function adoption(
  plan: AdoptedPlan,
  at: Instant,
  { before = null, takesBack }: { readonly before?: HeldTo | null; takesBack?: number } = {},
): Brought {
  const { version, engine, seed, hashes } = plan;
  const back = takesBack === undefined ? {} : { takesBack };
  const fact = { kind: 'planAdopted', plan, ...back } as const;
  const id = `plan-${hash({ version, engine, seed, hashes })}` as CommandId;
  return { id, at, facts: [fact, ...limitsFacts(before, plan)] };
}

const hash = (value: unknown) => createHash('sha256').update(canonical(value)).digest('hex');
