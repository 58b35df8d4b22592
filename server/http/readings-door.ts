import express, { type Request, type Response, type Router } from 'express';
import type { Refusal } from '../../shared/day/index.ts';
import { filePath } from '../../shared/kernel/index.ts';
import { readingsOfCsv, readingsSchema } from '../../shared/protocol/index.ts';
import { sayReadings } from '../../shared/words/index.ts';
import type { TakeReadings } from '../readings/index.ts';
import { isOurPage, knockOf } from '../socket/index.ts';
import type { Caller, Who } from '../who/index.ts';
import { notUnderstood } from './not-understood.ts';

export type ReadingsDoorParts = {
  readonly take: TakeReadings;
  readonly reader: Who['reader'];
  readonly names: readonly string[];
};

const LONGEST = '512kb';

/** The door /api/readings: temperatures from elsewhere, one or many, as JSON or as a table. */
export function readingsDoor({ take, reader, names }: ReadingsDoorParts): Router {
  const router = express.Router();
  const schema = readingsSchema();
  router.use((request, response, next) => {
    response.set('Cache-Control', 'no-store');
    if (isOurPage(knockOf(request), names)) return next();
    return response.status(403).type('text/plain').send('Not from there.\n');
  });
  router.use(express.json({ limit: LONGEST, strict: true, type: 'application/json' }));
  router.use(express.text({ limit: LONGEST, type: 'text/csv' }));
  router.post('/', async (request, response) => {
    const by = await reader(callerOf(request));
    if (!by.ok) return response.status(200).json(by);
    const table = typeof request.body === 'string' ? readingsOfCsv(request.body) : null;
    if (table && !table.ok) return bad(response, 'table', table.what);
    const read = schema.safeParse(table ? table.rows : request.body);
    if (!read.success) {
      const [issue] = read.error.issues;
      return bad(response, filePath(issue?.path ?? []), issue?.message ?? 'nothing makes sense');
    }
    const taken = await take(read.data, by.screenId);
    const found = taken.map((each) => each.found);
    const refusal = taken.find((each) => each.refusal)?.refusal;
    if (refusal) return response.status(200).json({ ok: false, refusal, readings: found });
    const said = sayReadings(found, 'en');
    return response.status(200).json({ ok: true, readings: found, said });
  });
  router.use(notUnderstood);
  return router;
}

function bad(response: Response, where: string, what: string) {
  const refusal: Refusal = { rule: 'bad-message', where, what };
  return response.status(400).json({ ok: false, refusal });
}

function callerOf({ headers, socket }: Request): Caller {
  const token = /^Bearer (\S{1,100})$/.exec(headers.authorization ?? '')?.[1] ?? null;
  return { address: socket.remoteAddress ?? 'nowhere', token };
}
