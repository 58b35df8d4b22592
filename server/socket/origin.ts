import type { IncomingMessage } from 'node:http';
import { isIP } from 'node:net';
import { isOverTls } from '../transport/index.ts';

/** Who asks, as it says itself, and under which of our names. */
type Knock = {
  readonly origin?: string | undefined;
  readonly host?: string | undefined;
  /** It came over TLS. */
  readonly isSecure?: boolean;
};

export const knockOf = (request: IncomingMessage): Knock => ({
  origin: request.headers.origin,
  host: request.headers.host,
  isSecure: isOverTls(request),
});

/**
 * Whether a socket may be opened by a page of this origin. CORS does not guard a WebSocket: any
 * page in the same browser can open one, so the origin must be our own. The host it was asked under
 * must be ours too, or a foreign name that was made to point at us would count as our own; an
 * address in figures cannot be made to. Over TLS a page that came without it is not our own: who
 * can listen on the network could have written it.
 * @param names the names this machine goes by.
 */
export function isOurPage(
  { origin, host, isSecure = false }: Knock,
  names: readonly string[],
): boolean {
  // A browser always says where its page comes from; what says nothing is a program on our network.
  if (origin === undefined) return true;
  const page = parse(origin);
  const here = host === undefined ? null : parse(`${isSecure ? 'https' : 'http'}://${host}`);
  if (!page || !here || (isSecure && page.protocol !== 'https:')) return false;
  const isHere =
    isLocal(here.hostname) || isFigures(here.hostname) || names.includes(here.hostname);
  if (!isHere) return false;
  // While screens are being built they come from a port of their own.
  const isFromHere = isLocal(page.hostname) && isLocal(here.hostname);
  return page.host === here.host || isFromHere;
}

function parse(url: string): URL | null {
  return URL.canParse(url) ? new URL(url) : null;
}

const isLocal = (hostname: string) => ['localhost', '127.0.0.1', '[::1]'].includes(hostname);

const isFigures = (hostname: string) => isIP(hostname.replace(/^\[|\]$/g, '')) !== 0;
