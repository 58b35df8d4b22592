import type { Instant, PersonId } from '../kernel/index.ts';

/** That somebody did something, and when. */
export type Deed = { readonly at: Instant; readonly by: PersonId | null };
