import express, { type Response, type Router } from 'express';
import type { Refusal } from '../../shared/day/index.ts';
import { filePath } from '../../shared/kernel/index.ts';
import { readingsOfCsv, readingsSchema } from '../../shared/protocol/index.ts';
import { sayReadings } from '../../shared/words/index.ts';
import type { TakeReadings } from '../readings/index.ts';
import type { Who } from '../who/index.ts';
import { callerOf } from './caller.ts';

export type ReadingsDoorParts = {
  readonly take: TakeReadings;
  readonly reader: Who['reader'];
};

const LONGEST = '512kb';

/** The door /api/readings: temperatures from elsewhere, one or many, as JSON or as a table. */
export function readingsDoor({ take, reader }: ReadingsDoorParts): Router {
  const router = express.Router();
  const schema = readingsSchema();
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
  return router;
}

function bad(response: Response, where: string, what: string) {
  const refusal: Refusal = { rule: 'bad-message', where, what };
  return response.status(400).json({ ok: false, refusal });
}
