import { z } from 'zod';
import type {
  BenchId,
  CutId,
  DishId,
  Frozen,
  Kilograms,
  RouteId,
  SkillId,
} from '../kernel/index.ts';
import { entry, idSchema, quantitySchema, schemaLink, textSchema } from '../kernel/index.ts';
import { allergenSchema } from './allergen-schema.ts';
import { cutSchema } from './cut-schema.ts';
import { mixSchema } from './mix-schema.ts';
import { roundSchema } from './round-schema.ts';
import { routeSchema } from './route-schema.ts';

const dishSchema = entry({
  id: idSchema<DishId>(),
  name: textSchema(),
  cut: idSchema<CutId>(),
  route: idSchema<RouteId>(),
  portion: quantitySchema<Kilograms>('weight in kilograms').describe('Served weight of one'),
  allergens: z
    .exactOptional(z.array(allergenSchema))
    .describe('Of what it is served with, besides its mixes: the bun'),
}).transform(({ portion, ...dish }) => ({ ...dish, portionKg: portion }));

export const catalogueSchema = entry({
  $schema: schemaLink(),
  skills: z.array(entry({ id: idSchema<SkillId>(), name: textSchema() })),
  benches: z
    .array(entry({ id: idSchema<BenchId>(), name: textSchema() }))
    .describe('Kinds of working place; the kitchen says which of its stations is which'),
  cuts: z.array(cutSchema),
  mixes: z.array(mixSchema),
  routes: z.array(routeSchema),
  dishes: z.array(dishSchema),
  rounds: z.array(roundSchema).default([]).describe('What things ask for while they are in use'),
}).transform(({ $schema: _link, ...catalogue }) => catalogue);

/** All that a kitchen knows how to make. */
export type Catalogue = Frozen<z.output<typeof catalogueSchema>>;
export type Dish = Catalogue['dishes'][number];
