import { z } from 'zod';
import type { SheetAsk } from './record-doors.ts';

/** What the doors of the record let in. */
export function recordSchemas() {
  const day = z.iso.date();
  const sheet: z.ZodType<SheetAsk> = z.strictObject({
    as: z.enum(['html', 'csv', 'json', 'labels']),
    from: day,
    to: day,
    language: z.enum(['en', 'es']),
    only: z.exactOptional(z.string().min(1).max(120)),
    at: z.exactOptional(
      z
        .string()
        .max(200)
        .regex(/^https?:\/\/[\w.:[\]-]+$/),
    ),
  });
  return {
    show: z.strictObject({}),
    trace: z.strictObject({ lot: z.string().min(1).max(40) }),
    day: z.strictObject({ day }),
    sheet,
  };
}
