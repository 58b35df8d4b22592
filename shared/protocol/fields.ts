import { z } from 'zod';

/** Longest name of anything that a message may carry. */
export const NAME_MAX = 120;

export const name = <Id extends string>() =>
  z
    .string()
    .min(1)
    .max(NAME_MAX)
    .transform((text) => text as Id);
export const number = <Unit extends number>() => z.number().transform((value) => value as Unit);
export const whole = <Unit extends number>() => z.int().transform((value) => value as Unit);
