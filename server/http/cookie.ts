import type { Request, Response } from 'express';
import { isOverTls } from '../transport/index.ts';

const NAME = 'coalface-page';
/** The longest that browsers keep one. */
const KEPT_MS = 400 * 86_400_000;

/**
 * Has a screen that was let in say so when it asks for its page, before any script of it can. It is
 * not its token: only what stands in the page hangs on it, and no door asks for it.
 */
export function keepPageKey(request: Request, response: Response, key: string): void {
  const secure = isOverTls(request);
  response.cookie(NAME, key, { httpOnly: true, sameSite: 'strict', secure, maxAge: KEPT_MS });
}

/** The key that a screen's page was given; null where it has none. */
export const pageKeyIn = ({ headers }: Request): string | null =>
  new RegExp(`(?:^|; )${NAME}=([\\w-]{1,100})(?:;|$)`).exec(headers.cookie ?? '')?.[1] ?? null;
