import express, { type Router } from 'express';
import { type DeskDeed, planSchemas } from '../../shared/protocol/index.ts';
import type { PlanDesk } from '../plan-desk/index.ts';
import type { Entitled, Who } from '../who/index.ts';
import { callerOf } from './caller.ts';

export type PlanDoorParts = {
  readonly desk: PlanDesk;
  readonly entitled: Who['entitled'];
};

const LONGEST = '128kb';

type Run = (by: Entitled, body: unknown) => Promise<object | null> | object | null;

/** The doors under /api/plan: the desk looks at a plan, tries a change of it, and takes it. */
export function planDoors({ desk, entitled }: PlanDoorParts): Router {
  const router = express.Router();
  const { show, draft, better, take, edit, undo, mend, takeMend, paper } = planSchemas();
  router.use(express.json({ limit: LONGEST, strict: true, type: 'application/json' }));

  function door(path: string, deed: DeskDeed, run: Run) {
    router.post(path, async (request, response) => {
      const by = await entitled(callerOf(request), deed);
      const found = by.ok ? await run(by, request.body) : by;
      if (!found) {
        const bad = { rule: 'bad-message', where: path, what: 'nothing makes sense' };
        return response.status(400).json({ ok: false, refusal: bad });
      }
      return response.status(200).json({ ok: !('refusal' in found), ...found });
    });
  }

  door('/show', 'draftPlan', (_by, body) => {
    const asked = show.safeParse(body);
    return asked.success ? desk.show(asked.data.day) : null;
  });
  door('/edit', 'draftPlan', (_by, body) => {
    const asked = edit.safeParse(body);
    if (!asked.success) return null;
    const { plan, edit: change, language } = asked.data;
    return desk.edit(plan, change, language);
  });
  door('/draft', 'draftPlan', (by, body) => {
    const asked = draft.safeParse(body);
    return asked.success ? desk.try(by, asked.data.plan, asked.data.language) : null;
  });
  door('/nearest', 'draftPlan', (by, body) => {
    const asked = draft.safeParse(body);
    return asked.success ? desk.nearest(by, asked.data.plan, asked.data.language) : null;
  });
  door('/better', 'draftPlan', (by, body) => {
    const asked = better.safeParse(body);
    if (!asked.success) return null;
    const { plan, language, steps } = asked.data;
    return desk.better(by, plan, language, steps);
  });
  door('/conflict', 'draftPlan', (by, body) => {
    const asked = draft.safeParse(body);
    return asked.success ? desk.whatConflicts(by, asked.data.plan, asked.data.language) : null;
  });
  door('/take', 'takePlan', (by, body) => {
    const asked = take.safeParse(body);
    if (!asked.success) return null;
    const { plan, language, steps } = asked.data;
    return desk.take(by, plan, language, steps);
  });
  door('/undo', 'undoPlan', (by, body) => {
    const asked = undo.safeParse(body);
    return asked.success ? desk.undo(by, asked.data.language) : null;
  });
  door('/mend', 'draftPlan', (by, body) => (mend.safeParse(body).success ? desk.mend(by) : null));
  door('/mend/take', 'takePlan', (by, body) => {
    const asked = takeMend.safeParse(body);
    return asked.success ? desk.takeMend(by, asked.data.id) : null;
  });
  door('/paper', 'draftPlan', (_by, body) => {
    const asked = paper.safeParse(body);
    return asked.success ? desk.paper(asked.data.language) : null;
  });
  return router;
}
