import type { ErrorRequestHandler } from 'express';
import type { Refusal } from '../../shared/day/index.ts';

/** JSON that is none, or far too much of it. */
export const notUnderstood: ErrorRequestHandler = (fault, _request, response, next) => {
  const status: unknown = fault?.status;
  if (typeof status !== 'number' || status < 400 || status >= 500) return next(fault);
  const what = 'it is no JSON that makes sense here';
  const refusal: Refusal = { rule: 'bad-message', where: 'body', what };
  return response.status(status).json({ ok: false, refusal });
};
