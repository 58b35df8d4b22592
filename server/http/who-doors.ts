import express, { type Router } from 'express';
import type { z } from 'zod';
import type { Refusal } from '../../shared/day/index.ts';
import { filePath } from '../../shared/kernel/index.ts';
import { type PairWaited, whoSchemas } from '../../shared/protocol/index.ts';
import type { Report } from '../report.ts';
import { type Caller, createTries, type Who } from '../who/index.ts';
import { addressOf, callerOf } from './caller.ts';
import { keepPageKey } from './cookie.ts';

export type WhoDoorParts = {
  readonly who: Who;
  readonly report: Report;
};

/** A desk that shows its list asks every other second; a person asks less often than that. */
const CALLS = { burst: 60, everyS: 0.2 };
const LONGEST = '4kb';

type Answered = {
  readonly ok: boolean;
  readonly refusal?: Refusal;
  readonly token?: string;
  readonly outcome?: PairWaited;
};

/**
 * The doors under /api. Each takes JSON with a token in its `Authorization` header and no cookie
 * (one is only given, for the page that is asked for next), so that no page from elsewhere can make
 * a browser ask in our name; what such a page sends all the same is turned away by its origin.
 * Nothing is changed by a GET, for there is none.
 */
export function whoDoors({ who, report }: WhoDoorParts): Router {
  const router = express.Router();
  const calls = createTries(CALLS, () => performance.now());
  const schemas = whoSchemas();

  router.use((request, response, next) => {
    const waitS = calls.take(addressOf(request));
    if (waitS === null) return next();
    return response.status(429).json(refusedBy({ rule: 'too-many-tries', waitS }));
  });
  router.use(express.json({ limit: LONGEST, strict: true, type: 'application/json' }));

  function door<T>(
    path: string,
    schema: z.ZodType<T>,
    run: (caller: Caller, asked: T) => Answered | Promise<Answered>,
  ) {
    router.post(path, async (request, response) => {
      const parsed = schema.safeParse(request.body);
      if (!parsed.success) return response.status(400).json(badMessage(path, parsed.error));
      const answer = await run(callerOf(request), parsed.data);
      const { refusal } = answer;
      const token = tokenIn(answer);
      if (token !== null) keepPageKey(request, response, who.pageKey(token));
      if (refusal) report({ level: 'note', what: `${path} refused`, rule: refusal.rule });
      return response.status(refusal?.rule === 'too-many-tries' ? 429 : 200).json(answer);
    });
  }

  const { entrance, pins } = who;
  door('/me', schemas.nothing, who.me);
  door('/claim', schemas.claim, entrance.claim);
  door('/pair', schemas.nothing, entrance.askIn);
  door('/pair/wait', schemas.secret, (_caller, { secret }) => entrance.waited(secret));
  door('/who', schemas.nothing, who.list);
  door('/let-in', schemas.letIn, entrance.letIn);
  door('/rename', schemas.rename, (caller, it) => who.change(caller, { kind: 'rename', ...it }));
  door('/move', schemas.move, (caller, it) => who.change(caller, { kind: 'move', ...it }));
  door('/revoke', schemas.revoke, (caller, it) => who.change(caller, { kind: 'revoke', ...it }));
  door('/pin', schemas.pin, pins.set);
  door('/language', schemas.language, who.setLanguage);
  door('/prove', schemas.prove, pins.prove);
  door('/leave', schemas.nothing, pins.leave);
  return router;
}

/** What a screen that is just let in is given. */
function tokenIn({ token, outcome }: Answered): string | null {
  return token ?? (outcome?.is === 'let-in' ? outcome.token : null);
}

const refusedBy = (refusal: Refusal) => ({ ok: false, refusal });

function badMessage(path: string, error: z.ZodError) {
  const issue = error.issues[0];
  const where = filePath([path.slice(1), ...(issue?.path ?? [])]);
  return refusedBy({ rule: 'bad-message', where, what: issue?.message ?? 'nothing makes sense' });
}
