import { z } from 'zod';
import type { Frozen } from '../kernel/index.ts';
import { entry, schemaLink } from '../kernel/index.ts';
import { rowSchema } from './row-schema.ts';

const changeSchema = entry({
  limits: z.string().min(1).describe('The profile that is kept to from then on, by its id'),
  why: z.string().trim().min(1).describe('What made it necessary: a letter, a visit, a new code'),
  by: z.string().trim().min(1).describe('Who decided it, by name'),
  rows: z
    .array(rowSchema)
    .default([])
    .describe('Rows of the profile as they are from then on, each whole'),
});

/** `limits.json`: every change of a kitchen’s limits, oldest first. Entries are only ever added. */
export const limitsFileSchema = entry({
  $schema: schemaLink(),
  changes: z.array(changeSchema).min(1),
});

/** One change of a kitchen's limits: to which profile, why, who, and the rows from then on. */
export type LimitsChange = Frozen<z.output<typeof changeSchema>>;
