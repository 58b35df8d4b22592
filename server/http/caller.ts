import type { Request } from 'express';
import type { Caller } from '../who/index.ts';

/** Who asks, by the token that it was given when it was let in. */
export function callerOf(request: Request): Caller {
  const token = /^Bearer (\S{1,100})$/.exec(request.headers.authorization ?? '')?.[1] ?? null;
  return { address: addressOf(request), token };
}

export const addressOf = ({ socket }: Request): string => socket.remoteAddress ?? 'nowhere';
