import { z } from 'zod';
import type { Celsius, Seconds } from '../kernel/index.ts';
import { entry, quantitySchema, rangeSchema, textSchema } from '../kernel/index.ts';

const temperature = () => quantitySchema<Celsius>('temperature in degrees Celsius');

/** How long work takes. */
export const timeSchema = entry({
  per: z.enum(['piece', 'batch']),
  takes: rangeSchema<Seconds>('duration in seconds'),
}).transform(({ per, takes }) => ({ per, takesS: takes }));

/** What must be found before work is done. */
export const checkSchema = entry({
  feel: textSchema().describe('What the hand or the eye must find'),
  notYet: z
    .exactOptional(textSchema())
    .describe('What it finds as long as it is not so; of the end of a cook both are to tap'),
  core: z.exactOptional(temperature()).describe('At the coldest point, at least'),
  coreAtMost: z.exactOptional(temperature()).describe('At the warmest point: of what is cooled'),
  held: z
    .exactOptional(quantitySchema<Seconds>('duration in seconds'))
    .describe('For how long; left out: as long as a reading takes'),
  of: z
    .exactOptional(z.enum(['the cook', 'reheating', 'cooling', 'holding']))
    .describe('Whose limit it must keep; left out: of the cook, if it names a core'),
}).transform(({ feel, notYet, core, coreAtMost, held, of }) => ({
  feel,
  ...(notYet === undefined ? {} : { notYet }),
  ...(core === undefined ? {} : { coreAtLeastC: core }),
  ...(coreAtMost === undefined ? {} : { coreAtMostC: coreAtMost }),
  ...(held === undefined ? {} : { heldS: held }),
  ...(of === undefined ? {} : { of }),
}));
