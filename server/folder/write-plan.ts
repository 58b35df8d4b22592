import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CookPlan } from '../../shared/plan/index.ts';
import { pageOf } from './page-of.ts';
import { schemaOf } from './schemas.ts';

/**
 * Writes a plan into its kitchen's folder, whole or not at all: whoever reads meanwhile finds the
 * old one or the new one.
 */
export function writePlan(folder: string, plan: CookPlan): void {
  const plans = join(folder, 'plans');
  mkdirSync(plans, { recursive: true });
  // Not by its ending: a file that is half written is nobody's plan.
  const draft = join(plans, `${plan.day}.json.new`);
  writeFileSync(draft, pageOf({ $schema: schemaOf.cookPlan, ...plan }));
  renameSync(draft, join(plans, `${plan.day}.json`));
}
