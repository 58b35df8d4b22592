import type { Instant, SteadyClock } from '../../shared/kernel/index.ts';
import type { ViewMessage } from '../../shared/protocol/index.ts';

/** When the hub was last heard, and what this device's own clock showed then. */
export type LastHeard = {
  readonly hubAt: Instant;
  readonly wallMs: number;
  /** How fast the hub's clock ran. */
  readonly speed: number;
  /** The kitchen's clock around then; none on the days on which it is changed. */
  readonly clock?: SteadyClock | null;
};

/** The day as the hub last had it on this screen. */
export type LastDay = { readonly message: ViewMessage; readonly heard: LastHeard };

/**
 * Where a device keeps the last day it was shown, to start from when there is no hub. Promises
 * reject where the store cannot do it; a screen goes on without.
 */
export type LastView = {
  read(): Promise<LastDay | null>;
  keepDay(day: LastDay): Promise<void>;
  /** The same day still stood then. */
  keepHeard(heard: LastHeard): Promise<void>;
  /** It is no longer this screen's to show. */
  forget(): Promise<void>;
};
