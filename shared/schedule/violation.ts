import type { ActivityId, Seconds } from '../kernel/index.ts';
import type { Clash, GoalId, Lag, Link, ResourceId } from './model.ts';

/** One thing a schedule does not keep, with its amount. */
export type Violation =
  | { readonly kind: 'unplaced'; readonly activity: ActivityId }
  | { readonly kind: 'placed-twice'; readonly activity: ActivityId }
  /** An id, a mode or a need that the problem does not have. */
  | { readonly kind: 'unknown'; readonly what: string }
  | { readonly kind: 'length'; readonly activity: ActivityId; readonly lengthS: Seconds }
  /** Before its release or the origin, after its deadline or the horizon. */
  | { readonly kind: 'out-of-time'; readonly activity: ActivityId; readonly byS: Seconds }
  /** Not as pinned. */
  | { readonly kind: 'pin'; readonly activity: ActivityId }
  /** A need that nothing fills, that is filled twice, or by what it does not name. */
  | { readonly kind: 'need'; readonly activity: ActivityId; readonly role: string }
  | { readonly kind: 'lag'; readonly lag: Lag; readonly byS: Seconds }
  | { readonly kind: 'link'; readonly link: Link; readonly byS: Seconds }
  | { readonly kind: 'goal'; readonly goal: GoalId; readonly byS: Seconds }
  | { readonly kind: 'closed'; readonly activity: ActivityId; readonly resource: ResourceId }
  | {
      readonly kind: 'capacity';
      readonly resource: ResourceId;
      readonly atS: Seconds;
      readonly used: number;
      readonly capacity: number;
      readonly activities: readonly ActivityId[];
    }
  /** Too little time, or none, between two states. */
  | {
      readonly kind: 'state';
      readonly resource: ResourceId;
      readonly first: ActivityId | null;
      readonly second: ActivityId;
      readonly byS: Seconds;
    }
  | { readonly kind: 'clash'; readonly clash: Clash; readonly forS: Seconds };
