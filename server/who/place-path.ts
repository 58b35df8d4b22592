import type { Place } from '../../shared/day/index.ts';

/** Where a screen of this place finds its face, from the hub's own address on. */
export function pathOf({ role, stations }: Place): string {
  if (role === 'desk') return '/desk.html';
  if (role === 'pit') return '/smoker.html';
  if (role === 'pass') return '/pass.html';
  if (stations.length === 0) return '/';
  return `/station.html?station=${stations.map(encodeURIComponent).join(',')}`;
}
