import { z } from 'zod';
import type { BatchCheck, CorrectiveAction } from '../day/index.ts';
import type {
  BatchId,
  Celsius,
  CoolerId,
  CutId,
  StationId,
  ThermometerId,
} from '../kernel/index.ts';
import { name, number } from './fields.ts';

const ofBatch = [
  'end-temperature',
  'hot-hold',
  'reheat',
  'discard-time',
  'out-of-temperature',
] as const satisfies readonly BatchCheck[];

/** What was looked at, and what was done about it, each with these fields at its head. */
export function checks<Head extends z.core.$ZodShape>(head: Head) {
  const batch = name<BatchId>();
  const on = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('receiving'), cut: name<CutId>() }),
    z.strictObject({ kind: z.enum(ofBatch), batch }),
    z.strictObject({ kind: z.literal('cooling'), batch, stage: z.int().min(1) }),
    z.strictObject({ kind: z.literal('cold-hold'), cooler: name<CoolerId>() }),
    z.strictObject({ kind: z.literal('thermometer'), thermometer: name<ThermometerId>() }),
    z.strictObject({
      kind: z.literal('clean'),
      station: name<StationId>(),
      table: z.int().min(1).nullable(),
    }),
  ]);
  return [
    z.strictObject({
      ...head,
      kind: z.literal('check'),
      on,
      tempC: number<Celsius>().nullable(),
      thermometer: name<ThermometerId>().nullable(),
      feel: z.exactOptional(z.enum(['there', 'not-yet'])),
    }),
    z.strictObject({ ...head, kind: z.literal('correct'), on, action: name<CorrectiveAction>() }),
  ] as const;
}
