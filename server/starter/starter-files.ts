import { addDays, type Instant, wallTime } from '../../shared/kernel/index.ts';
import { catalogue } from '../demo/index.ts';
import kitchen from './kitchen.json' with { type: 'json' };
import { onlyDishes } from './only-dishes.ts';
import services from './services.json' with { type: 'json' };

/** How much of the demo's catalogue a new kitchen begins with. */
export type StartFrom = 'three dishes' | 'all dishes';

/**
 * A kitchen that is small enough to be read in one sitting, and a plan for the day after `now`: two
 * smokers, three hands, three dishes, one service. All its work fits into that day.
 */
export function starterFiles(now: Instant, zone: string, from: StartFrom) {
  const planned = services.flatMap(({ dishes }) => dishes.map(({ dish }) => dish));
  return {
    kitchen: { ...kitchen, zone },
    catalogue: from === 'all dishes' ? catalogue : onlyDishes(catalogue, planned),
    cookPlan: { day: addDays(wallTime(now, zone).day, 1), services },
  };
}
