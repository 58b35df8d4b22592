import { z } from 'zod';
import type { WhatIf } from '../day/index.ts';
import type { SlotId, TaskId } from '../kernel/index.ts';
import { minutes } from '../kernel/index.ts';
import { name } from './fields.ts';

export type AskedWhatIf = { readonly stay: TaskId; readonly whatIf: WhatIf };

/** No pit is set further from where it is by one hand's word (judged). */
const MOST_K = 80;
const KELVIN_PER_F = 5 / 9;

/** Sooner than this it is another day's plan (judged). */
const MOST_MIN = 12 * 60;

/**
 * A load, and one thing that might be done about it: another fire, a wrap now, another rack; or, of
 * what waits, to put it in sooner.
 */
export function whatIfSchema(): z.ZodType<AskedWhatIf> {
  const stay = name<TaskId>();
  const by = z.number().min(-MOST_K).max(MOST_K);
  return z.union([
    z
      .strictObject({ stay, fireByF: by })
      .transform(({ stay, fireByF }) => ({ stay, whatIf: fire(fireByF * KELVIN_PER_F) })),
    z
      .strictObject({ stay, fireByK: by })
      .transform(({ stay, fireByK }) => ({ stay, whatIf: fire(fireByK) })),
    z.strictObject({ stay, wrapNow: z.enum(['paper', 'foil']) }).transform(({ stay, wrapNow }) => ({
      stay,
      whatIf: { kind: 'wrap', wrap: wrapNow } as const,
    })),
    z
      .strictObject({ stay, moveTo: name<SlotId>() })
      .transform(({ stay, moveTo }) => ({ stay, whatIf: { kind: 'move', to: moveTo } as const })),
    z.strictObject({ stay, earlierByMin: z.int().min(1).max(MOST_MIN) }).transform((asked) => ({
      stay: asked.stay,
      whatIf: { kind: 'earlier', byS: minutes(asked.earlierByMin) } as const,
    })),
  ]);
}

const fire = (byK: number) => ({ kind: 'fire', byK }) as const;
