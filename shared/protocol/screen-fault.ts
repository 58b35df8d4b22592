import { z } from 'zod';

/** What a screen says at the door /api/faults: that something of ours failed on it. */
export type ScreenFault = {
  /** The page, with what it was asked to show. */
  readonly page: string;
  /** The fault and where in the page's files it is, as its browser puts it. */
  readonly said: string;
};

/** Long enough for the way to a fault, and no longer. */
export const FAULT_LETTERS = { page: 200, said: 2000 } as const;

/** What may be told at that door. */
export function screenFaultSchema(): z.ZodType<ScreenFault> {
  const { page, said } = FAULT_LETTERS;
  return z.strictObject({ page: z.string().max(page), said: z.string().min(1).max(said) });
}
