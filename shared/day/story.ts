import type { Event, EventHead, Fact } from './event.ts';
import type { MendFact } from './mend-fact.ts';

/**
 * What happened, to be told again: a plan by its number alone, for its body is long, and a repair
 * without the order that it makes.
 */
export type Told = EventHead &
  (
    | Exclude<Fact, { kind: 'planAdopted' | 'forecastAdopted' | 'dayMended' }>
    | Omit<MendFact, 'links'>
    | {
        readonly kind: 'planAdopted';
        readonly planVersion: number;
        readonly takesBack?: number;
      }
  );

/** An event as the day's story keeps it; null for what is reckoned, which did not happen. */
export function toldOf(event: Event): Told | null {
  if (event.kind === 'forecastAdopted') return null;
  if (event.kind === 'dayMended') {
    const { links: _long, ...rest } = event;
    return rest;
  }
  if (event.kind !== 'planAdopted') return event;
  const { plan, ...rest } = event;
  return { ...rest, planVersion: plan.version };
}
