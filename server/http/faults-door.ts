import express, { type Router } from 'express';
import { screenFaultSchema } from '../../shared/protocol/index.ts';
import type { Report } from '../report.ts';
import { createPace } from '../socket/index.ts';
import type { Who } from '../who/index.ts';
import { callerOf } from './caller.ts';

export type FaultsDoorParts = {
  readonly me: Who['me'];
  readonly report: Report;
};

/** All screens together; one that fails in all of its parts tells some twenty at once. */
const PACE = { perSecond: 1, burst: 60 };

/** The door /api/faults: what failed on a screen is written down here, where somebody looks. */
export function faultsDoor({ me, report }: FaultsDoorParts): Router {
  const router = express.Router();
  const schema = screenFaultSchema();
  const pace = createPace(PACE);
  router.use(express.json({ limit: '8kb', strict: true, type: 'application/json' }));
  router.post('/', (request, response) => {
    const by = me(callerOf(request));
    if (!by.ok) return response.status(200).json(by);
    if (!by.isOpen && by.place === null) {
      return response.status(200).json({ ok: false, refusal: { rule: 'screen-unknown' } });
    }
    // What is told faster than somebody could read it is the same again.
    if (pace.tryTake(performance.now()) > 0) return response.status(200).json({ ok: true });
    const told = schema.safeParse(request.body);
    if (!told.success) {
      const refusal = { rule: 'bad-message', where: '', what: 'allowed: page, said' };
      return response.status(400).json({ ok: false, refusal });
    }
    const screen = by.place?.name;
    report({ level: 'fault', what: 'something failed on a screen', screen, ...told.data });
    return response.status(200).json({ ok: true });
  });
  return router;
}
