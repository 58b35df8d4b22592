import type { FileFault, LocalDay, WallTime } from '../kernel/index.ts';
import { filePath, resolveLocal, shown } from '../kernel/index.ts';
import type { CookPlan } from './schema.ts';

type TimeOf = 'opens' | 'closes' | 'ready';
type TimeAt = {
  readonly service: number;
  readonly dish?: number;
  readonly of: TimeOf;
  readonly time: WallTime;
  readonly path: readonly PropertyKey[];
};

/**
 * Times of a plan that the clock on the wall skips on the night it goes forward. Nobody can say
 * when they are, and food that is ready an hour after it was meant is late.
 */
export function skippedTimes(cookPlan: CookPlan, zone: string): FileFault[] {
  const { day } = cookPlan;
  return timesOf(cookPlan)
    .filter(({ time }) => resolveLocal(day, time, zone).reading === 'skipped')
    .map(({ path, time }) => ({
      path: filePath(path),
      found: shown(time),
      allowed: `${NOT_SKIPPED}${nearestTo(time, day, zone).map(shown).join(' or ')}`,
    }));
}

export const NOT_SKIPPED = 'a time that the clock does not skip that night, such as ';

/** A time of a plan that comes twice on the night the clock goes back; the first is taken. */
export type TimeTwice = {
  readonly service: CookPlan['services'][number]['name'];
  readonly dish?: string;
  readonly of: TimeOf;
  readonly time: WallTime;
};

/** Of which times of a plan somebody must know that the first of two is meant. */
export function timesTwice(cookPlan: CookPlan, zone: string): TimeTwice[] {
  return timesOf(cookPlan)
    .filter(({ time }) => resolveLocal(cookPlan.day, time, zone).reading === 'twice')
    .flatMap(({ service: index, dish: place, of, time }) => {
      const service = cookPlan.services[index];
      const dish = place === undefined ? undefined : service?.dishes[place]?.dish;
      return service ? [{ service: service.name, ...(dish && { dish }), of, time }] : [];
    });
}

function timesOf({ services }: CookPlan): TimeAt[] {
  return services.flatMap(({ opens, closes, dishes }, service) => {
    const at = ['services', service];
    const ready = dishes.flatMap(({ batches = [] }, dish) =>
      batches.map((batch, index): TimeAt => {
        const path = [...at, 'dishes', dish, 'batches', index, 'ready'];
        return { service, dish, of: 'ready', time: batch.ready, path };
      }),
    );
    return [
      { service, of: 'opens', time: opens, path: [...at, 'opens'] },
      { service, of: 'closes', time: closes, path: [...at, 'closes'] },
      ...ready,
    ];
  });
}

const HALF_HOURS = [-60, -30, 30, 60] as const;

/** The time before and the one after that are there; clocks jump by an hour, rarely by half. */
function nearestTo(time: WallTime, day: LocalDay, zone: string): WallTime[] {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  const near = HALF_HOURS.map((by) => hour * 60 + minute + by)
    .filter((minutes) => minutes >= 0 && minutes < 48 * 60)
    .map(written)
    .filter((other) => resolveLocal(day, other, zone).reading !== 'skipped');
  const before = near.filter((other) => other < time).slice(-1);
  return [...before, ...near.filter((other) => other > time).slice(0, 1)];
}

const written = (minutes: number): WallTime =>
  [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
