import type { BenchId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Kitchen, Station } from '../kitchen/index.ts';

/**
 * The station where this kind of work is done; the first that is listed, where there are several.
 */
export function stationOf(kitchen: Kitchen, bench: BenchId): Station {
  return must(
    kitchen.stations.find(({ benches }) => benches.includes(bench)),
    `a station with the bench ${bench}`,
  );
}
