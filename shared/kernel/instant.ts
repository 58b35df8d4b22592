import type { Brand } from './brand.ts';
import type { Seconds } from './units.ts';
import { seconds } from './units.ts';

/** An instant: an integer of milliseconds since 1970-01-01T00:00Z. */
export type Instant = Brand<number, 'UTC milliseconds'>;

/** Says that a bare number is an instant in UTC milliseconds. */
export const instant = (ms: number) => ms as Instant;

/** @example after(instant(0), seconds(2)) //=> instant 2000 */
export const after = (from: Instant, duration: Seconds) => instant(from + duration * 1000);

/**
 * Whole seconds from `origin` to `at`, rounded down.
 * @example since(instant(500), instant(2600)) //=> 2
 */
export const since = (origin: Instant, at: Instant) => seconds(Math.floor((at - origin) / 1000));
