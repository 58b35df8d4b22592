import express, { type Request, type Router } from 'express';
import type { Refusal } from '../../shared/day/index.ts';
import { planSchemas } from '../../shared/protocol/index.ts';
import type { PlanDesk } from '../plan-desk/index.ts';
import { isOurPage } from '../socket/index.ts';
import type { Caller } from '../who/index.ts';

export type PlanDoorParts = {
  readonly desk: PlanDesk;
  /** The screen that asks, if it may edit a plan; else why not. */
  readonly editor: (caller: Caller) => Promise<{ readonly screen: string } | Refusal>;
  readonly names: readonly string[];
};

const LONGEST = '128kb';

/** The doors under /api/plan: the desk looks at a plan, tries a change of it, and takes it. */
export function planDoors({ desk, editor, names }: PlanDoorParts): Router {
  const router = express.Router();
  const { show, draft, edit, undo } = planSchemas();
  router.use((request, response, next) => {
    response.set('Cache-Control', 'no-store');
    const { origin, host } = request.headers;
    if (isOurPage({ origin, host }, names)) return next();
    return response.status(403).type('text/plain').send('Not from there.\n');
  });
  router.use(express.json({ limit: LONGEST, strict: true, type: 'application/json' }));

  function door(
    path: string,
    run: (screen: string, body: unknown) => Promise<object | null> | object | null,
  ) {
    router.post(path, async (request, response) => {
      const known = await editor(callerOf(request));
      if ('rule' in known) return response.status(200).json({ ok: false, refusal: known });
      const found = await run(known.screen, request.body);
      const bad = { rule: 'bad-message', where: path, what: 'nothing makes sense' };
      return response
        .status(found ? 200 : 400)
        .json(found ? { ok: true, ...found } : { ok: false, refusal: bad });
    });
  }

  door('/show', (_screen, body) => {
    const asked = show.safeParse(body);
    return asked.success ? desk.show(asked.data.day) : null;
  });
  door('/edit', (_screen, body) => {
    const asked = edit.safeParse(body);
    if (!asked.success) return null;
    const { plan, edit: change, language } = asked.data;
    return desk.edit(plan, change, language);
  });
  door('/draft', (screen, body) => {
    const asked = draft.safeParse(body);
    return asked.success ? desk.try(screen, asked.data.plan, asked.data.language) : null;
  });
  door('/take', (screen, body) => {
    const asked = draft.safeParse(body);
    return asked.success ? desk.take(screen, asked.data.plan, asked.data.language) : null;
  });
  door('/undo', (screen, body) => {
    const asked = undo.safeParse(body);
    return asked.success ? desk.undo(screen, asked.data.language) : null;
  });
  return router;
}

function callerOf({ headers, socket }: Request): Caller {
  const token = /^Bearer (\S{1,100})$/.exec(headers.authorization ?? '')?.[1] ?? null;
  return { address: socket.remoteAddress ?? 'nowhere', token };
}
