import type { RequestHandler } from 'express';
import type { Report } from '../report.ts';
import { isOurPage, knockOf } from '../socket/index.ts';

/**
 * The threshold of all doors: only pages of this hub come over it, and nothing that is answered is
 * kept on the way.
 * @param names the names this machine goes by, beside its addresses.
 */
export function ourPages(names: readonly string[], report: Report): RequestHandler {
  return (request, response, next) => {
    response.set('Cache-Control', 'no-store');
    const knock = knockOf(request);
    if (isOurPage(knock, names)) return next();
    const { origin } = knock;
    report({ level: 'warning', what: 'a page from elsewhere asked at a door', origin });
    return response.status(403).type('text/plain').send('Not from there.\n');
  };
}
