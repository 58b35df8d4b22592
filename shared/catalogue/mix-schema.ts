import { z } from 'zod';
import type { Frozen, Kilograms, Litres, MixId } from '../kernel/index.ts';
import { entry, idSchema, quantitySchema, textSchema } from '../kernel/index.ts';
import { allergenSchema } from './allergen-schema.ts';

/** As the handbook tells them apart; the limits have a row for each. */
const cureMethods = [
  'comminuted',
  'pumped or immersed',
  'dry',
  'bacon, pumped',
  'bacon, immersed',
  'bacon, dry',
] as const;

const part = entry({
  ingredient: textSchema(),
  parts: z.number().positive().describe('By weight, beside the parts of the others'),
  allergens: z.array(allergenSchema).default([]),
  nitrite: z
    .exactOptional(quantitySchema<number>('share of one'))
    .describe('Of curing salt: how much of it is sodium nitrite, 6.25 % of the usual one'),
});

const dose = z.discriminatedUnion('of', [
  entry({
    of: z.literal('trimmed weight'),
    share: quantitySchema<number>('share of one'),
  }),
  entry({
    of: z.literal('piece'),
    volume: quantitySchema<Litres>('volume in litres'),
    litreWeighs: quantitySchema<Kilograms>('weight in kilograms'),
  }).transform(({ of, volume, litreWeighs }) => ({
    of,
    volumeL: volume,
    litreWeighsKg: litreWeighs,
  })),
]);

export const mixSchema = entry({
  id: idSchema<MixId>(),
  name: textSchema(),
  kind: z.enum(['rub', 'injection', 'binder', 'sauce']),
  parts: z.array(part).min(1),
  dose: dose.describe('How much of it a cut takes'),
  cures: z
    .exactOptional(z.enum(cureMethods))
    .describe('How it cures, where curing salt is in it: each way has its own limit'),
  takesUp: z
    .exactOptional(quantitySchema<number>('share of one'))
    .describe('How much of the dose the meat takes up, where it is steeped; left out: all of it'),
  over: quantitySchema<number>('share of one').describe('Made above the dose, since it runs short'),
}).transform(({ over, ...mix }) => ({ ...mix, overShare: over }));

/** A rub, an injection, a binder or a sauce, by parts of weight. */
export type Mix = Frozen<z.output<typeof mixSchema>>;
