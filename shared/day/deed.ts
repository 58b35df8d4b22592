import type { Instant, PersonId, ScreenId } from '../kernel/index.ts';

/** That somebody did something, and when. */
export type Deed = {
  readonly at: Instant;
  readonly by: PersonId | null;
  /** The screen it was tapped on, where that may be all that is known. */
  readonly screen?: ScreenId | null;
};
