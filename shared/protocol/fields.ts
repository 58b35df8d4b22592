import { z } from 'zod';

/** Longest name of anything that a message may carry. */
export const NAME_MAX = 120;

/** A name of something, taken for the id of its kind. */
export const name = <Id extends string>() =>
  z
    .string()
    .min(1)
    .max(NAME_MAX)
    .transform((text) => text as Id);
/** A number in its unit. */
export const number = <Unit extends number>() => z.number().transform((value) => value as Unit);
/** A whole number in its unit. */
export const whole = <Unit extends number>() => z.int().transform((value) => value as Unit);
