import type { Text } from '../shared/kernel/index.ts';
import type { Kitchen } from '../shared/kitchen/index.ts';

/** Where a screen is, from the hub's own address on. */
export type ScreenAddress = { readonly path: string; readonly name: Text };

/** The walls of a kitchen: one for each station, and one for its smokers. */
export function screensOf({ stations }: Kitchen): ScreenAddress[] {
  return [
    // The work at the pit is on the smokers' wall.
    ...stations
      .filter(({ pit }) => !pit)
      .map(({ id, name }) => ({
        path: `/station.html?station=${encodeURIComponent(id)}`,
        name,
      })),
    { path: '/smoker.html', name: { en: 'Smokers', es: 'Ahumadores' } },
  ];
}
