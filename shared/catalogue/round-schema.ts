import { z } from 'zod';
import type { BenchId, Frozen, Kilograms, Seconds, SkillId, StepId } from '../kernel/index.ts';
import { entry, idSchema, quantitySchema, rangeSchema, textSchema } from '../kernel/index.ts';
import { checkSchema } from './work-schema.ts';

const duration = () => quantitySchema<Seconds>('duration in seconds');

const what = entry({
  count: z.int().min(1),
  one: textSchema().describe('What one is called: "split"'),
  many: textSchema().describe('What several are called: "splits"'),
  weighs: z.exactOptional(quantitySchema<Kilograms>('weight in kilograms')).describe('All of it'),
}).transform(({ count, one, many, weighs }) => ({
  count,
  piece: { one, many },
  weightKg: weighs ?? (0 as Kilograms),
}));

export const roundSchema = entry({
  id: idSchema<StepId>(),
  title: textSchema().describe('Imperative, verb and thing: "Feed wood"'),
  short: z.exactOptional(textSchema()).describe('The same as a noun in a word or two: "wood"'),
  mind: z.exactOptional(textSchema()).describe('The one thing to mind'),
  caution: z.exactOptional(textSchema()).describe('Where it can hurt someone'),
  bench: idSchema<BenchId>().describe('On whose wall it is shown'),
  skill: z.exactOptional(idSchema<SkillId>()),
  when: z
    .enum(['before', 'while', 'after', 'between'])
    .describe('Before use, in use on a beat, after use, or between two kinds of raw meat'),
  every: z.exactOptional(duration()).describe('The beat, of what is done in use'),
  early: z.exactOptional(duration()).describe('So much sooner it may be; left out: not at all'),
  late: z.exactOptional(duration()).describe('So much later it may be; left out: not at all'),
  takes: rangeSchema<Seconds>('duration in seconds'),
  what: what.describe('What is handled or read, so that the line says how much'),
  check: z.exactOptional(checkSchema),
})
  .refine(({ when, every }) => (when === 'while') === (every !== undefined), {
    path: ['every'],
    error: 'a beat such as "45 min" where it is done in use, and only there',
  })
  .transform(({ every, early, late, takes, ...round }) => ({
    ...round,
    ...(every === undefined ? {} : { everyS: every }),
    earlyS: early ?? (0 as Seconds),
    lateS: late ?? (0 as Seconds),
    takesS: takes,
  }));

/** Work that a thing of the kitchen asks for while it is in use, whatever is made with it. */
export type Round = Frozen<z.output<typeof roundSchema>>;
