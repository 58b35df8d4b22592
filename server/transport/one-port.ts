import type { Server } from 'node:http';
import type { Socket } from 'node:net';
import type { SecureContextOptions } from 'node:tls';
import { createServer } from 'node:tls';

/** The first byte of a TLS handshake (RFC 8446 §5.1); no method of HTTP begins with it. */
const HANDSHAKE = 0x16;
/** So long a connection may say nothing. */
const SILENT_MS = 10_000;

/** Takes another certificate; links that are open keep theirs. */
export type Renewable = { renew(context: SecureContextOptions): void };

/**
 * Has a server speak TLS on its own port to whoever begins so, and plain HTTP to the others, so
 * that an address is one number and a tablet that leaves out the `s` is not met by silence.
 */
export function speakTls(http: Server, context: SecureContextOptions): Renewable {
  const plain = http.listeners('connection') as ((socket: Socket) => void)[];
  const secure = createServer({ ...context, ALPNProtocols: ['http/1.1'] });
  const take = (socket: Socket) => {
    for (const listener of plain) listener.call(http, socket);
  };
  secure.on('secureConnection', take);
  // A tablet without our authority hangs up in the handshake: nothing that anybody here must know.
  secure.on('tlsClientError', (_fault, socket) => socket.destroy());
  http.removeAllListeners('connection');
  http.on('connection', (socket: Socket) => {
    const hangUp = () => socket.destroy();
    socket.on('error', hangUp);
    socket.setTimeout(SILENT_MS, hangUp);
    socket.once('readable', () => {
      socket.setTimeout(0);
      socket.removeListener('timeout', hangUp);
      socket.removeListener('error', hangUp);
      const first = socket.read(1) as Buffer | null;
      if (first === null) {
        hangUp();
        return;
      }
      socket.unshift(first);
      if (first[0] === HANDSHAKE) secure.emit('connection', socket);
      else take(socket);
    });
  });
  return { renew: (renewed) => secure.setSecureContext(renewed) };
}
