import express, { type Request, type Router } from 'express';
import { alertsAskSchema } from '../../shared/protocol/index.ts';
import type { AlertDesk } from '../alerts/index.ts';
import { isOurPage, knockOf } from '../socket/index.ts';
import type { Caller, Who } from '../who/index.ts';
import { notUnderstood } from './not-understood.ts';

export type AlertsDoorParts = {
  readonly desk: Pick<AlertDesk, 'show'>;
  readonly reader: Who['reader'];
  readonly names: readonly string[];
};

/** The door /api/alerts: who is wanted for what, for the pit and the desk. */
export function alertsDoor({ desk, reader, names }: AlertsDoorParts): Router {
  const router = express.Router();
  const schema = alertsAskSchema();
  router.use((request, response, next) => {
    response.set('Cache-Control', 'no-store');
    if (isOurPage(knockOf(request), names)) return next();
    return response.status(403).type('text/plain').send('Not from there.\n');
  });
  router.use(express.json({ limit: '1kb', strict: true, type: 'application/json' }));
  router.post('/', async (request, response) => {
    const by = await reader(callerOf(request));
    if (!by.ok) return response.status(200).json(by);
    const asked = schema.safeParse(request.body);
    if (asked.success) return response.status(200).json(desk.show(asked.data));
    const refusal = { rule: 'bad-message', where: '', what: 'allowed: screen, sounds' };
    return response.status(400).json({ ok: false, refusal });
  });
  router.use(notUnderstood);
  return router;
}

function callerOf({ headers, socket }: Request): Caller {
  const token = /^Bearer (\S{1,100})$/.exec(headers.authorization ?? '')?.[1] ?? null;
  return { address: socket.remoteAddress ?? 'nowhere', token };
}
