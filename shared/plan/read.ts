import type { Catalogue } from '../catalogue/index.ts';
import { readCatalogue } from '../catalogue/index.ts';
import type { FileFault, FileRead } from '../kernel/index.ts';
import { checkReferences, readEntry } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { readKitchen } from '../kitchen/index.ts';
import { skippedTimes } from './clock-changes.ts';
import type { CookPlan } from './schema.ts';
import { cookPlanSchema } from './schema.ts';
import { unknownInKitchen, unknownInPlan } from './unknown.ts';

/** The three files that a day is planned from. */
export type PlanFiles = {
  readonly catalogue: Catalogue;
  readonly kitchen: Kitchen;
  readonly cookPlan: CookPlan;
};

/** What is wrong at one place of one of the files. */
export type PlanFileFault = FileFault & { readonly file: keyof PlanFiles };

/** Reads a cook plan, or says all that is wrong with it at once. */
export function readCookPlan(
  json: unknown,
  against?: Pick<PlanFiles, 'catalogue' | 'kitchen'>,
): FileRead<CookPlan> {
  const read = readEntry(cookPlanSchema, json);
  const twice = [
    ...checkReferences(json, { ids: ['services[].id'], references: [] }),
    ...dishesTwice(json),
  ];
  if (!read.ok) return { ok: false, problems: [...read.problems, ...twice] };
  const cookPlan: CookPlan = read.value;
  const problems = [
    ...twice,
    ...(against ? unknownInPlan(cookPlan, against) : []),
    ...(against ? skippedTimes(cookPlan, against.kitchen.zone) : []),
  ];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: cookPlan };
}

/** A dish is planned once for a service: its batches are its own. */
function dishesTwice(json: unknown): FileFault[] {
  const services = (json as { readonly services?: unknown } | null)?.services;
  if (!Array.isArray(services)) return [];
  return services.flatMap((service: unknown, index) =>
    checkReferences(service, { ids: ['dishes[].dish'], references: [] }).map((fault) => ({
      ...fault,
      path: `services[${index}].${fault.path}`,
      allowed: 'each dish once in a service',
    })),
  );
}

/** Reads the three files together: each by itself, and what each says of the others. */
export function readPlanFiles(
  json: Readonly<Record<keyof PlanFiles, unknown>>,
):
  | { readonly ok: true; readonly value: PlanFiles }
  | { readonly ok: false; readonly problems: readonly PlanFileFault[] } {
  const catalogue = readCatalogue(json.catalogue);
  const kitchen = readKitchen(json.kitchen);
  const known =
    catalogue.ok && kitchen.ok ? { catalogue: catalogue.value, kitchen: kitchen.value } : undefined;
  const cookPlan = readCookPlan(json.cookPlan, known);
  const across = known ? unknownInKitchen(known.kitchen, known.catalogue) : [];
  const problems = [
    ...faultsOf('catalogue', catalogue),
    ...faultsOf('kitchen', kitchen),
    ...across.map((fault) => ({ ...fault, file: 'kitchen' as const })),
    ...faultsOf('cookPlan', cookPlan),
  ];
  if (!known || !cookPlan.ok || problems.length > 0) return { ok: false, problems };
  return { ok: true, value: { ...known, cookPlan: cookPlan.value } };
}

function faultsOf(file: keyof PlanFiles, read: FileRead<unknown>): PlanFileFault[] {
  return read.ok ? [] : read.problems.map((fault) => ({ ...fault, file }));
}
