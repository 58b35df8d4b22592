import { catalogue as cataloguePlain } from '../../../server/demo/catalogue.ts';
import { planLimits } from '../../../server/plan-limits.ts';
import { must, weekdays } from '../../../shared/kernel/index.ts';
import {
  type Built,
  type BuiltDay,
  build,
  type PlanFiles,
  readPlanFiles,
} from '../../../shared/plan/index.ts';
import { foodCode } from '../../../shared/safety/index.ts';
import cookPlanPlain from './two-dishes.json' with { type: 'json' };
import kitchenPlain from './two-smokers.json' with { type: 'json' };

/** What plans are held to in these tests. */
export const limits = planLimits(foodCode);

/** The invented kitchen as it was when it had two smokers and made two dishes. */
export const plain = {
  catalogue: cataloguePlain,
  kitchen: kitchenPlain,
  cookPlan: cookPlanPlain,
} as const;

/**
 * A file with some places changed, or taken away where the new value is undefined. An entry of a
 * list is named by its place or by its id: `routes[0].steps[serve].when`.
 */
export function spoilt(file: unknown, changes: Readonly<Record<string, unknown>>): unknown {
  const copy: unknown = structuredClone(file);
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
    const last = must(keys.at(-1), path);
    const parent = keys.slice(0, -1).reduce(child, copy) as Record<string, unknown>;
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }
  return copy;
}

function child(parent: unknown, key: string): unknown {
  if (Array.isArray(parent) && Number.isNaN(Number(key))) {
    return parent.find((entry: { readonly id?: string }) => entry.id === key);
  }
  return (parent as Record<string, unknown>)[key];
}

/** The invented kitchen's files, some of them changed, read. */
export function filesWith(changed: Partial<Record<keyof PlanFiles, unknown>> = {}): PlanFiles {
  const read = readPlanFiles({ ...plain, ...changed });
  return must(read.ok ? read.value : null, JSON.stringify(read));
}

/** The same kitchen with its two days' shifts worked on every day. */
export const kitchenEveryDay = {
  ...kitchenPlain,
  crew: kitchenPlain.crew.map((person) => ({
    ...person,
    shifts: person.shifts.map((shift) => ({ ...shift, on: weekdays })),
  })),
};

type Line = (typeof cookPlanPlain)['services'][number]['dishes'][number];

/** A plan of one service with one line, from noon to half past one. */
export function onePlan(
  line: Partial<Record<keyof Line | 'slots' | 'hands', unknown>>,
  times = {},
) {
  const dish = { dish: 'ribs', sales: { by: 'shape', portions: 20, shape: 'even' }, ...line };
  const service = { id: 'noon', name: { en: 'Noon' }, opens: '12:00', closes: '13:30', ...times };
  return { day: cookPlanPlain.day, services: [{ ...service, dishes: [dish] }] };
}

export function buildWith(changed: Partial<Record<keyof PlanFiles, unknown>> = {}): Built {
  const { cookPlan, kitchen, catalogue } = filesWith(changed);
  return build(cookPlan, { kitchen, catalogue, limits });
}

/** The built day, or a loud failure with its refusals. */
export function dayWith(changed: Partial<Record<keyof PlanFiles, unknown>> = {}): BuiltDay {
  const built = buildWith(changed);
  return must(built.ok ? built.day : null, JSON.stringify(built));
}

/** What keeps these files from being a day. */
export function refusalsWith(changed: Partial<Record<keyof PlanFiles, unknown>>) {
  const built = buildWith(changed);
  return built.ok ? [] : built.refusals;
}
