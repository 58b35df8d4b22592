import { z } from 'zod';
import type {
  BatchId,
  Celsius,
  CommandId,
  CutId,
  DishId,
  Instant,
  Kilograms,
  LotId,
  PersonId,
  Seconds,
  ServiceId,
  SmokerId,
  TaskId,
} from '../kernel/index.ts';
import { NAME_MAX, name, number, whole } from './fields.ts';

/** Most lots that one batch is cut from; a tray holds fewer. */
const LOTS_MAX = 20;

/** What happens to a day besides its tasks, each with these fields at its head. */
export function happenings<Head extends z.core.$ZodShape>(head: Head) {
  const smoker = name<SmokerId>();
  const tempC = number<Celsius>();
  const hand = name<PersonId>();
  const backAt = whole<Instant>().nullable();
  const sale = { service: name<ServiceId>(), dish: name<DishId>() };
  const batch = name<BatchId>();
  const weightKg = number<Kilograms>();
  const sold = z.int();
  const command = name<CommandId>();
  const cut = name<CutId>();
  const written = z.string().trim().max(NAME_MAX);
  const lot = {
    ...{ cut, pieces: z.int(), weightKg, supplier: written.min(1) },
    tempC: tempC.nullable(),
    useBy: z.iso.date().nullable(),
    code: written.min(1).nullable(),
  };
  // Only where somebody was asked: what is not there was not said.
  const saidSo = { isSo: z.literal(true).optional() };
  const lots = z.array(name<LotId>()).min(1).max(LOTS_MAX);
  return [
    z.strictObject({ ...head, kind: z.literal('smokerDown'), smoker, tempC, backAt }),
    z.strictObject({ ...head, kind: z.literal('smokerCold'), smoker, tempC }),
    z.strictObject({ ...head, kind: z.literal('smokerUp'), smoker, tempC }),
    z.strictObject({ ...head, kind: z.literal('doorOpen'), smoker, openS: whole<Seconds>() }),
    z.strictObject({ ...head, kind: z.literal('handOut'), hand, backAt }),
    z.strictObject({ ...head, kind: z.literal('handIn'), hand }),
    z.strictObject({
      ...{ ...head, kind: z.literal('delivery'), cut, pieces: z.int(), weightKg },
      ...saidSo,
    }),
    z.strictObject({ ...head, kind: z.literal('receive'), ...lot, ...saidSo }),
    z.strictObject({ ...head, kind: z.literal('cutFrom'), batch, lots }),
    z.strictObject({
      ...{ ...head, kind: z.literal('weighCure'), task: name<TaskId>() },
      ...{ weightKg, first: hand, second: hand },
    }),
    z.strictObject({ ...head, kind: z.literal('weighTub'), batch, tub: name<string>(), weightKg }),
    z.strictObject({ ...head, kind: z.literal('sold'), ...sale, sold }),
    z.strictObject({ ...head, kind: z.literal('soldOut'), ...sale }),
    z.strictObject({ ...head, kind: z.literal('panEmpty'), batch }),
    z.strictObject({ ...head, kind: z.literal('carryOver'), batch, weightKg }),
    z.strictObject({ ...head, kind: z.literal('closeDay') }),
    z.strictObject({ ...head, kind: z.literal('undo'), command }),
  ] as const;
}
