import type { IncomingMessage } from 'node:http';
import { isIP } from 'node:net';

/** Whether what was asked came over TLS. */
export const isOverTls = ({ socket }: Pick<IncomingMessage, 'socket'>): boolean =>
  'encrypted' in socket && socket.encrypted === true;

/**
 * Whether nobody on the network could read along: it came over TLS, or never left this machine. A
 * proxy on this machine is one of us.
 */
export function isUnheard(request: Pick<IncomingMessage, 'socket'>): boolean {
  const { remoteAddress = '', localAddress } = request.socket;
  return isOverTls(request) || isLoopback(remoteAddress) || remoteAddress === localAddress;
}

/** 127.0.0.0/8 (RFC 1122 §3.2.1.3) or ::1 (RFC 4291 §2.5.3), also as IPv6 spells the former. */
function isLoopback(address: string): boolean {
  const figures = address.replace(/^::ffff:/, '');
  return figures === '::1' || (isIP(figures) === 4 && figures.startsWith('127.'));
}
