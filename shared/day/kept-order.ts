import type { Instant } from '../kernel/index.ts';
import type { Event } from './event.ts';

/**
 * Events as if each had been kept no earlier than those before it, of which `fromAt` is the first:
 * the clock that told when may have been set back.
 */
export function inKeptOrder(events: readonly Event[], fromAt: Instant): readonly Event[] {
  let latest = fromAt;
  return events.map((event) => {
    if (event.keptAt < latest) return { ...event, keptAt: latest };
    latest = event.keptAt;
    return event;
  });
}
