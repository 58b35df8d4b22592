import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Request, RequestHandler } from 'express';
import { stationLikeness } from '../../shared/paper/index.ts';
import { type Face, type StationView, stationAt, type View } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import type { Report } from '../report.ts';
import { isOurPage, knockOf } from '../socket/index.ts';
import { keepPageKey, pageKeyIn } from './cookie.ts';

export type FirstWordsParts = {
  /** The folder of built screens. */
  readonly dist: string;
  /** What the page with this key may show of a face now; null where it may show nothing. */
  readonly look: (face: Face, key: string | null) => View | null;
  /** The names this machine goes by, beside its addresses. */
  readonly names: readonly string[];
  readonly report: Report;
};

/**
 * Puts what stands at a station into the page that asks for its wall, in plain words: a device that
 * has nothing of ours yet shows its hands their work before it has read a script.
 */
export function firstWords({ dist, look, names, report }: FirstWordsParts): RequestHandler {
  const wordsFor = (request: Request, key: string | null): string | null => {
    try {
      const address = new URL(request.originalUrl, 'http://here').searchParams;
      const face = stationAt(address);
      const view = face && isUnderOurName(request, names) ? look(face, key) : null;
      if (view?.face !== 'station') return null;
      return stationLikeness(view, { now: view.at, ...readerOf(view, address) });
    } catch (fault) {
      report({ level: 'fault', what: 'a page begins without its words', fault });
      return null;
    }
  };
  return async (request, response, next) => {
    const key = pageKeyIn(request);
    const words = wordsFor(request, key);
    if (words === null) return next();
    const page = await readFile(join(dist, 'station.html'), 'utf8');
    if (key !== null) keepPageKey(request, response, key);
    // Kept whole by a browser for who goes back to it, a page is quicker than any words.
    response.set('Cache-Control', 'private, no-cache').type('html');
    // By a function: a "$&" in somebody's name means nothing.
    return response.send(page.replace('<body>', (tag) => tag + words));
  };
}

/** Somebody else's name that was made to point at us would have its own page read what we show. */
function isUnderOurName(request: Request, names: readonly string[]): boolean {
  const knock = knockOf(request);
  const origin = `${knock.isSecure ? 'https' : 'http'}://${knock.host}`;
  return isOurPage({ ...knock, origin }, names);
}

/** Whose page it is; the language is the address's or theirs: the device may have another. */
function readerOf(
  { zone, clock, temperature, weight, people }: StationView,
  address: URLSearchParams,
) {
  const owner = people.find(({ id }) => id === address.get('person'));
  const language = address.get('language') ?? owner?.language;
  const say: Say = { language: language === 'es' ? 'es' : 'en', zone, clock, temperature, weight };
  return { say, own: owner?.id ?? null };
}
