import { join, sep } from 'node:path';
import express, { type ErrorRequestHandler, type Express, type RequestHandler } from 'express';
import type { StandardsShown } from '../../shared/view/index.ts';
import type { Health } from '../hub/index.ts';
import type { Report } from '../report.ts';
import type { ScreenAddress } from '../screens.ts';
import { safeHeaders } from './headers.ts';

export type AppParts = {
  /** The folder of built screens. */
  readonly dist: string;
  readonly health: () => Health;
  /** For the page that lists the screens. */
  readonly screens: () => readonly ScreenAddress[];
  /** How every cut is trimmed; null before there is a kitchen. */
  readonly standards: () => StandardsShown | null;
  /** Comes before everything else: the way to a trusted link, and who is shown no other. */
  readonly install: RequestHandler;
  /** What stands in the page of a station's wall. */
  readonly firstWords: RequestHandler;
  /** The doors under /api. */
  readonly doors: RequestHandler;
  readonly report: Report;
};

/** The pages of the screens, a word on how the hub is, and the doors for who may do what. */
export function createApp(parts: AppParts): Express {
  const { dist, health, screens, standards, install, firstWords, doors, report } = parts;
  const app = express();
  app.disable('x-powered-by');
  app.use(safeHeaders);
  app.use(install);
  app.get('/health', (_request, response) => {
    const now = health();
    response
      .set('Cache-Control', 'no-store')
      .status(now.readOnly ? 503 : 200)
      .json(now);
  });
  app.get('/screens.json', (_request, response) => {
    response.set('Cache-Control', 'no-store').json(screens());
  });
  app.get('/standards.json', (_request, response) => {
    response.set('Cache-Control', 'no-store').json(standards());
  });
  app.use('/api', doors);
  app.get('/station.html', firstWords);
  app.use(
    express.static(dist, {
      index: 'index.html',
      setHeaders: (response, path) => {
        // The name of an asset carries the hash of what is in it; a page must be asked for anew.
        const isAsset = path.startsWith(join(dist, 'assets') + sep);
        const keep = isAsset ? 'public, max-age=31536000, immutable' : 'no-cache';
        response.set('Cache-Control', keep);
      },
    }),
  );
  app.use((_request, response) => {
    response.status(404).type('text/plain').send('There is no such page. The list of screens: /\n');
  });
  const onFault: ErrorRequestHandler = (fault, request, response, next) => {
    report({ level: 'fault', what: 'a page could not be served', path: request.path, fault });
    if (response.headersSent) return next(fault);
    response.status(500).type('text/plain').send('The hub failed at this page.\n');
  };
  app.use(onFault);
  return app;
}
