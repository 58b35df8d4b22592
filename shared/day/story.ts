import type { Event, EventHead, Fact } from './event.ts';

/** What happened, to be told again: a plan by its number alone, for its body is long. */
export type Told = EventHead &
  (
    | Exclude<Fact, { kind: 'planAdopted' }>
    | { readonly kind: 'planAdopted'; readonly planVersion: number }
  );

/** An event as the day's story keeps it. */
export function toldOf(event: Event): Told {
  if (event.kind !== 'planAdopted') return event;
  const { plan, ...rest } = event;
  return { ...rest, planVersion: plan.version };
}
