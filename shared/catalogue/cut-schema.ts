import { z } from 'zod';
import type { CutId, Frozen, Kilograms, Metres, Seconds } from '../kernel/index.ts';
import { entry, idSchema, quantitySchema, rangeSchema, textSchema } from '../kernel/index.ts';
import { allergenSchema } from './allergen-schema.ts';
import { standardSchema } from './standard-schema.ts';

const piece = entry({
  one: textSchema().describe('What one is called: "slab"'),
  many: textSchema().describe('What several are called: "slabs"'),
});

const footprint = entry({
  length: quantitySchema<Metres>('length in metres'),
  width: quantitySchema<Metres>('length in metres'),
}).transform(({ length, width }) => ({ lengthM: length, widthM: width }));

const share = () => rangeSchema<number>('share of one');

const yields = entry({
  trim: share().describe('Trimmed weight of raw weight'),
  cook: share().describe('Cooked weight of trimmed weight'),
  carve: share().describe('Served weight of cooked weight'),
});

/** The cuts of which it is known how heat and water go through them. */
const known = ['shoulder', 'brisket', 'flat', 'ribs', 'short ribs', 'chicken'] as const;

const cooks = entry({
  like: z.enum(known).describe('The cut that heat goes through most alike'),
  thickness: quantitySchema<Metres>('length in metres').describe('Of a trimmed piece, where most'),
}).transform(({ like, thickness }) => ({ like, thicknessM: thickness }));

const tub = entry({
  id: idSchema<string>(),
  name: textSchema(),
  imps: z.exactOptional(z.string()),
  share: share().describe('Of the raw weight'),
  goes: z
    .enum(['cooked', 'sausage', 'rendered', 'stock', 'waste'])
    .describe('What becomes of it; the pitmaster may choose otherwise'),
});

export const cutSchema = entry({
  id: idSchema<CutId>(),
  name: textSchema(),
  species: z.enum(['beef', 'pork', 'lamb', 'chicken', 'turkey', 'poultry', 'plant']),
  imps: z
    .exactOptional(z.string().regex(/^P?\d{3,4}[A-E]?$/, 'an IMPS item number such as "416A"'))
    .describe('The item of the Institutional Meat Purchase Specifications that is bought'),
  trimmedTo: z
    .exactOptional(z.string())
    .describe('The item that it is trimmed to, where there is one'),
  boughtAs: z
    .exactOptional(idSchema<CutId>())
    .describe('The cut whose line of the pull list it shares; left out: its own'),
  takenFrom: z
    .exactOptional(z.array(entry({ cut: idSchema<CutId>(), tub: idSchema<string>() })).min(1))
    .describe('Not bought: these tubs of other cuts, when they are trimmed for the same plan'),
  keeps: z
    .exactOptional(quantitySchema<Seconds>('duration in seconds'))
    .describe('How long what is taken from another may lie cold before work on it begins'),
  allergens: z
    .exactOptional(z.array(allergenSchema))
    .describe('Of the cut as it comes, where it comes seasoned or with something in it'),
  fatCap: z.boolean().describe('Whether one side is fat, which is laid toward the heat'),
  piece,
  trayHolds: z
    .exactOptional(z.int().min(2).max(1000))
    .describe('Pieces on a tray: a tap on the tally counts so many; left out: piece by piece'),
  weight: rangeSchema<Kilograms>('weight in kilograms').describe('Of one raw piece, as it comes'),
  footprint: footprint.describe('What one trimmed piece takes up on a rack'),
  cooks: z.exactOptional(cooks).describe('Left out: no forecast is made of how it cooks'),
  yields,
  standard: z.exactOptional(standardSchema).describe('How it is trimmed; left out: by its steps'),
  tubs: z.array(tub).describe('What trimming takes off, kept apart and weighed once a batch'),
}).transform(({ weight, keeps, ...cut }) => ({
  ...cut,
  weightKg: weight,
  ...(keeps === undefined ? {} : { keepsS: keeps }),
}));

/** A cut as it is bought, with what is lost of it on the way to the plate. */
export type Cut = Frozen<z.output<typeof cutSchema>>;
/** Trim that is kept apart and weighed once, at the end of its batch. */
export type Tub = Cut['tubs'][number];
