import { z } from 'zod';
import type { PlanEdit } from '../plan/index.ts';

/** What the doors of the plan let in; the plan itself is read by its own schema. */
export function planSchemas() {
  const language = z.enum(['en', 'es']);
  return {
    show: z.strictObject({ day: z.string().max(10).nullable() }),
    draft: z.strictObject({ plan: z.unknown(), language }),
    better: z.strictObject({ plan: z.unknown(), language, steps: z.int().min(0).max(20_000) }),
    take: z.strictObject({
      plan: z.unknown(),
      language,
      steps: z.int().min(0).max(20_000).default(0),
    }),
    edit: z.strictObject({ plan: z.unknown(), edit: editSchema(), language }),
    undo: z.strictObject({ language }),
    paper: z.strictObject({ language }),
    mend: z.strictObject({}),
    takeMend: z.strictObject({ id: z.string().max(40) }),
  };
}

function editSchema(): z.ZodType<PlanEdit> {
  const name = z.string().min(1).max(120);
  const at = { service: name, dish: name };
  const whole = z.int().min(1).max(100_000);
  const ready = z.string().max(5);
  return z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('portions'), ...at, portions: whole }),
    z.strictObject({ kind: z.literal('choose'), ...at, choice: name, option: name.nullable() }),
    z.strictObject({ kind: z.literal('addBatch'), ...at, portions: whole, ready }),
    z.strictObject({
      kind: z.literal('splitBatch'),
      ...at,
      number: whole,
      portions: whole,
      ready,
    }),
    z.strictObject({ kind: z.literal('mergeBatches'), ...at, number: whole, other: whole }),
    z.strictObject({ kind: z.literal('dropBatch'), ...at, number: whole }),
  ]);
}
