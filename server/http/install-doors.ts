import { X509Certificate } from 'node:crypto';
import type { RequestHandler } from 'express';
import express from 'express';
import type { InstallFacts } from '../../shared/protocol/index.ts';
import { isUnheard, type Transport } from '../transport/index.ts';

export type InstallParts = {
  readonly tls: Transport['tls'];
  /** Where other devices find the hub over TLS. */
  readonly addresses: () => readonly string[];
};

/** What a device may fetch before it can trust us: the certificate, and a page to get it from. */
const BEFORE_TRUST = /^\/(install\.(html|json)|coalface\.crt|icon\.svg|assets\/.*)$/;

/**
 * The doors of the certificate, and the guard before all others: whoever asks over the network
 * without TLS learns only how to come by it.
 */
export function installDoors({ tls, addresses }: InstallParts): RequestHandler {
  const router = express.Router();
  const authority = () => tls?.authority() ?? null;
  router.use((request, response, next) => {
    if (tls === null || isUnheard(request) || (authority() && BEFORE_TRUST.test(request.path)))
      return next();
    response.set('Cache-Control', 'no-store');
    const { accept = '' } = request.headers;
    const isPage = request.method === 'GET' && accept.includes('text/html');
    if (!isPage) return response.status(403).type('text/plain').send('Only over https.\n');
    // A path that begins with two strokes would be the name of another host.
    const to = `/${request.originalUrl.replace(/^\/+/, '')}`;
    return response.redirect(
      307,
      authority() ? `/install.html?to=${encodeURIComponent(to)}` : `${addresses()[0]}${to}`,
    );
  });
  router.get('/install.json', (_request, response) => {
    const facts: InstallFacts = {
      fingerprint: authority()?.fingerprint ?? null,
      addresses: addresses(),
    };
    // A page over plain HTTP sees by this answer, unread, that its device trusts us by now.
    response.set({ 'Cache-Control': 'no-store', 'Cross-Origin-Resource-Policy': 'cross-origin' });
    response.json(facts);
  });
  router.get('/coalface.crt', (_request, response, next) => {
    const found = authority();
    if (!found) return next();
    response.set('Cache-Control', 'no-store').type('application/x-x509-ca-cert');
    return response.send(new X509Certificate(found.pem).raw);
  });
  return router;
}
