import express, { type Router } from 'express';
import { filePath } from '../../shared/kernel/index.ts';
import { whatIfSchema } from '../../shared/protocol/index.ts';
import type { AskWhatIf } from '../forecast/index.ts';
import type { Who } from '../who/index.ts';
import { callerOf } from './caller.ts';

export type WhatIfDoorParts = {
  readonly ask: AskWhatIf;
  readonly reader: Who['reader'];
};

/** The door /api/what-if, for whoever may read at the pit: it changes nothing. */
export function whatIfDoor({ ask, reader }: WhatIfDoorParts): Router {
  const router = express.Router();
  const schema = whatIfSchema();
  router.use(express.json({ limit: '4kb', strict: true, type: 'application/json' }));
  router.post('/', async (request, response) => {
    const by = await reader(callerOf(request));
    if (!by.ok) return response.status(200).json(by);
    const asked = schema.safeParse(request.body);
    if (asked.success) return response.status(200).json(await ask(asked.data));
    const where = filePath(asked.error.issues[0]?.path ?? []);
    const what = 'allowed: stay, and one of fireByF, fireByK, wrapNow, moveTo, earlierByMin';
    const refusal = { rule: 'bad-message', where, what };
    return response.status(400).json({ ok: false, refusal });
  });
  return router;
}
