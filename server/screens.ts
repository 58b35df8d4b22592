import type { Text } from '../shared/kernel/index.ts';
import type { Kitchen } from '../shared/kitchen/index.ts';

/** Where a screen is, from the hub's own address on. */
export type ScreenAddress = { readonly path: string; readonly name: Text };

/** The screens of a kitchen: one for each station, one for its smokers, the pass and the desk. */
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
    { path: '/pass.html', name: { en: 'Pass: what is ready', es: 'Pase: lo que está listo' } },
    { path: '/desk.html', name: { en: 'Desk', es: 'Escritorio' } },
  ];
}
