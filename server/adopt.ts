import { createHash } from 'node:crypto';
import type { AdoptedPlan } from '../shared/day/index.ts';
import { assert, type CommandId, canonical, type Instant } from '../shared/kernel/index.ts';
import {
  type BuiltDay,
  build,
  type PlanFiles,
  type PlanRefusal,
  planDay,
} from '../shared/plan/index.ts';
import { type Conflict, check, construct } from '../shared/schedule/index.ts';
import type { Brought } from './hub/index.ts';
import { planLimits, profileNamed, profileNames } from './plan-limits.ts';

/** Written into every plan, so that a replay knows which engine it came from. */
const ENGINE = 'constructive 1';
const SEED = 1;

export type PlanMade =
  | { readonly ok: true; readonly plan: AdoptedPlan }
  /** It cannot be worked out at all. */
  | { readonly ok: false; readonly why: 'refused'; readonly refusals: readonly PlanRefusal[] }
  /** Worked out, but hands, places and time do not suffice. */
  | {
      readonly ok: false;
      readonly why: 'no-schedule';
      readonly built: BuiltDay;
      readonly conflicts: readonly Conflict[];
    };

/** Works a cook plan out into tasks and a schedule, or says why it cannot be. */
export function makePlan(files: PlanFiles, version: number): PlanMade {
  const { cookPlan, kitchen, catalogue } = files;
  const profile = profileNamed(kitchen.limits);
  if (profile === null) {
    const path = 'kitchen.json: limits';
    const allowed = `one of: ${profileNames.join(', ')}`;
    const refusal = { rule: 'unknown-word', path, found: `"${kitchen.limits}"`, allowed } as const;
    return { ok: false, why: 'refused', refusals: [refusal] };
  }
  const built = build(cookPlan, { kitchen, catalogue, limits: planLimits(profile) });
  if (!built.ok) return { ok: false, why: 'refused', refusals: built.refusals };
  const planned = planDay(built.day, construct, { seed: SEED });
  if (!planned.ok) {
    return { ok: false, why: 'no-schedule', built: built.day, conflicts: planned.conflicts };
  }
  const violations = check(planned.day.problem, planned.schedule);
  assert(violations.length === 0, `the schedule breaks ${JSON.stringify(violations[0])}`);
  const plan = {
    version,
    engine: ENGINE,
    seed: SEED,
    hashes: hashesOf(files),
    ...files,
    built: planned.day,
    schedule: planned.schedule,
  };
  return { ok: true, plan };
}

/** Hexadecimal SHA-256 over the canonical JSON of each document. */
export function hashesOf({ cookPlan, kitchen, catalogue }: PlanFiles): AdoptedPlan['hashes'] {
  return { cookPlan: hash(cookPlan), kitchen: hash(kitchen), catalogue: hash(catalogue) };
}

/** The plan as the fact that the hub is to keep; the same plan, brought again, is kept once. */
export function adoption(plan: AdoptedPlan, at: Instant): Brought {
  const { version, engine, seed, hashes } = plan;
  const id = `plan-${hash({ version, engine, seed, hashes })}` as CommandId;
  return { id, at, facts: [{ kind: 'planAdopted', plan }] };
}

const hash = (value: unknown) => createHash('sha256').update(canonical(value)).digest('hex');
