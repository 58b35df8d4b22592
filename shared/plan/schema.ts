import { z } from 'zod';
import type { DishId, Frozen, PersonId, ServiceId, SlotId } from '../kernel/index.ts';
import {
  clockSchema,
  entry,
  idSchema,
  isLocalDay,
  schemaLink,
  textSchema,
} from '../kernel/index.ts';

const slotId = z
  .string()
  .regex(/^[a-z0-9-]+\/\d+$/, 'a slot such as "a/2": the smoker and the rack, counted from the top')
  .transform((id) => id as SlotId);

/**
 * How a service sells: so many portions spread by a known shape, or counted for each quarter of an
 * hour.
 */
const sales = z.discriminatedUnion('by', [
  entry({
    by: z.literal('shape'),
    portions: z.int().min(1),
    shape: z
      .enum(['even', 'early', 'middle', 'late'])
      .describe('Where in the service most is sold'),
  }),
  entry({
    by: z.literal('quarter'),
    portions: z
      .array(z.int().min(0))
      .min(1)
      .describe('For each quarter of an hour from the opening on'),
  }),
]);

const plannedBatch = entry({
  number: z
    .int()
    .min(1)
    .describe('It goes by this number for as long as it is in the plan, whatever comes or goes'),
  portions: z.int().min(1),
  ready: clockSchema().describe('When its first portion stands ready'),
});

const plannedDish = entry({
  dish: idSchema<DishId>(),
  sales,
  choices: z
    .record(z.string(), z.string())
    .default({})
    .describe('Choices of the route that differ from the usual'),
  batches: z
    .exactOptional(z.array(plannedBatch).min(1))
    .describe('The batches to make; left out: as few as the limits allow, by the sales'),
  slots: z
    .exactOptional(z.array(slotId).min(1))
    .describe('Only in these slots; left out: wherever there is room'),
  hands: z
    .record(z.string(), idSchema<PersonId>())
    .default({})
    .describe('Who does a step, by the name of the step'),
});

const service = entry({
  id: idSchema<ServiceId>(),
  name: textSchema(),
  opens: clockSchema(),
  closes: clockSchema(),
  dishes: z.array(plannedDish).min(1),
});

export const cookPlanSchema = entry({
  $schema: schemaLink(),
  day: z
    .string()
    .refine(isLocalDay, { error: 'a day such as "2026-11-25"' })
    .describe('The local day that the first service falls on; work may start the day before'),
  services: z.array(service).min(1),
  betterSteps: z
    .exactOptional(z.int().min(1).max(20_000))
    .describe(
      'So many steps a better plan is looked for when the day is planned; the same find the same',
    ),
}).transform(({ $schema: _link, ...cookPlan }) => cookPlan);

/** What a kitchen means to serve on one day. */
export type CookPlan = Frozen<z.output<typeof cookPlanSchema>>;
export type Service = CookPlan['services'][number];
export type PlannedDish = CookPlan['services'][number]['dishes'][number];
export type PlannedBatch = NonNullable<PlannedDish['batches']>[number];
export type Sales = PlannedDish['sales'];
