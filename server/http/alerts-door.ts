import express, { type Router } from 'express';
import { alertsAskSchema } from '../../shared/protocol/index.ts';
import type { AlertDesk } from '../alerts/index.ts';
import type { Who } from '../who/index.ts';
import { callerOf } from './caller.ts';

export type AlertsDoorParts = {
  readonly desk: Pick<AlertDesk, 'show'>;
  readonly reader: Who['reader'];
};

/** The door /api/alerts: who is wanted for what, for the pit and the desk. */
export function alertsDoor({ desk, reader }: AlertsDoorParts): Router {
  const router = express.Router();
  const schema = alertsAskSchema();
  router.use(express.json({ limit: '1kb', strict: true, type: 'application/json' }));
  router.post('/', async (request, response) => {
    const by = await reader(callerOf(request));
    if (!by.ok) return response.status(200).json(by);
    const asked = schema.safeParse(request.body);
    if (asked.success) return response.status(200).json(desk.show(asked.data));
    const refusal = { rule: 'bad-message', where: '', what: 'allowed: screen, sounds' };
    return response.status(400).json({ ok: false, refusal });
  });
  return router;
}
