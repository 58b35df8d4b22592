import type { Text } from '../../shared/view/index.ts';
import type { StartGroup } from '../../shared/words/index.ts';

/** A screen as the hub lists it. */
export type Listed = { readonly path: string; readonly name: Text };

const PAGES: Readonly<Record<string, StartGroup>> = {
  '/station.html': 'stations',
  '/smoker.html': 'pit',
  '/pass.html': 'pass',
  '/desk.html': 'desk',
};

/** Who a listed screen is for. */
export const groupOf = ({ path }: Listed): StartGroup | undefined =>
  PAGES[path.split('?')[0] ?? ''];

/** The station that a listed screen shows, as its address names it. */
export const stationOf = ({ path }: Listed): string =>
  new URLSearchParams(path.split('?')[1]).get('station') ?? '';

/**
 * Where the work of these stations stands on one page, and whose own it is.
 * @example pathTo(['trim', 'mix'], 'ines') //=> '/station.html?station=trim,mix&person=ines'
 */
export function pathTo(stations: readonly string[], person: string | null): string {
  const named = stations.map(encodeURIComponent).join(',');
  const own = person === null ? '' : `&person=${encodeURIComponent(person)}`;
  return `/station.html?station=${named}${own}`;
}
