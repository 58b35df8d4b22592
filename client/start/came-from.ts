const WALLS = ['/station.html', '/smoker.html', '/pass.html'];

/**
 * The wall that a start page was opened from, as the wall has written it behind `#`; null where it
 * was opened by itself, or something else stands there.
 */
export function cameFrom({ hash, origin }: Pick<Location, 'hash' | 'origin'>): string | null {
  const said = hash.slice(1);
  const to = said.startsWith('/') && URL.canParse(said, origin) ? new URL(said, origin) : null;
  if (to?.origin !== origin || !WALLS.includes(to.pathname)) return null;
  return to.pathname + to.search;
}
