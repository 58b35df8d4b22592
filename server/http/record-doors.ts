import express, { type Router } from 'express';
import { recordSchemas } from '../../shared/protocol/index.ts';
import type { RecordDesk } from '../record/index.ts';
import type { Who } from '../who/index.ts';
import { callerOf } from './caller.ts';

export type RecordDoorParts = {
  readonly desk: RecordDesk;
  readonly entitled: Who['entitled'];
};

type Read<Asked> =
  | { readonly success: true; readonly data: Asked }
  | { readonly success: false; readonly error: unknown };

/** The doors under /api/record, for the desk: they change nothing. */
export function recordDoors({ desk, entitled }: RecordDoorParts): Router {
  const router = express.Router();
  const { show, trace, day, sheet } = recordSchemas();
  router.use(express.json({ limit: '4kb', strict: true, type: 'application/json' }));

  function door<Asked>(
    path: string,
    read: (body: unknown) => Read<Asked>,
    run: (asked: Asked) => Promise<object | null> | object | null,
  ) {
    router.post(path, async (request, response) => {
      const by = await entitled(callerOf(request), 'readRecord');
      if (!by.ok) return response.status(200).json(by);
      const asked = read(request.body);
      const where = path.slice(1);
      if (!asked.success) {
        const refusal = { rule: 'bad-message', where, what: 'nothing makes sense' };
        return response.status(400).json({ ok: false, refusal });
      }
      const found = await run(asked.data);
      if (found) return response.status(200).json({ ok: true, ...found });
      return response.status(200).json({ ok: false, refusal: { rule: 'not-on-record' } });
    });
  }

  door('/show', (body) => show.safeParse(body), desk.show);
  door(
    '/trace',
    (body) => trace.safeParse(body),
    ({ lot }) => desk.trace(lot),
  );
  door(
    '/day',
    (body) => day.safeParse(body),
    (asked) => desk.day(asked.day),
  );
  door('/sheet', (body) => sheet.safeParse(body), desk.sheet);
  return router;
}
