import type { IncomingMessage, Server } from 'node:http';
import type { Closing } from '../closing.ts';
import type { Report } from '../report.ts';
import { type GivenFiles, givenCertificate, namesIn } from './given.ts';
import { hostNames, namesHere } from './names.ts';
import { speakTls } from './one-port.ts';
import { type Authority, type Held, ownCertificate } from './own.ts';
import { isUnheard } from './who-may-speak-plain.ts';

/** A day goes by, a lease of an address runs out, a file is renewed by its own program. */
const LOOK_AGAIN_MS = 60 * 60_000;

/** Where the hub's certificate comes from; none: it speaks plain HTTP alone. */
export type TlsChoice =
  | { readonly kind: 'own' }
  | ({ readonly kind: 'given' } & GivenFiles)
  | { readonly kind: 'none' };

export type Transport = {
  /** Null where the hub speaks plain HTTP alone. */
  readonly tls: {
    /** What a tablet has to install; null where somebody else vouches for the hub. */
    authority(): Authority | null;
    /** The name that other devices should use; null: the addresses in figures. */
    readonly name: string | null;
  } | null;
  /** Names this hub goes by, beside its addresses. */
  readonly names: readonly string[];
  /** For whoever starts it. */
  readonly lines: readonly string[];
  /** Whether all that the hub has may be asked for in this way. */
  isSafe(request: IncomingMessage): boolean;
  /** Before it listens. */
  serve(http: Server): void;
};

export type TransportParts = {
  readonly choice: TlsChoice;
  readonly folder: string;
  readonly kitchen: string;
  readonly host: string;
  /** Names it goes by that this machine does not know of. */
  readonly also: readonly string[];
  readonly report: Report;
  readonly closing: Closing;
};

/** Makes ready what the hub speaks by, and keeps its certificate from running out. */
export async function openTransport(parts: TransportParts): Promise<Transport> {
  const { choice, also } = parts;
  const names = [...namesHere(), ...also];
  if (choice.kind === 'none') {
    return { tls: null, names, lines: [], isSafe: () => true, serve: () => {} };
  }
  let held = await certificateNow(parts, choice);
  const given = choice.kind === 'given' ? namesIn(held.pair.cert) : [];
  return {
    tls: { authority: () => held.authority, name: given[0] ?? null },
    names: [...names, ...given],
    lines: held.lines,
    isSafe: isUnheard,
    serve(http) {
      const speaking = speakTls(http, held.pair);
      keepGood(parts, choice, (renewed) => {
        if (renewed.pair.cert === held.pair.cert) return;
        held = renewed;
        speaking.renew(held.pair);
      });
    },
  };
}

type Speaking = Exclude<TlsChoice, { readonly kind: 'none' }>;

async function certificateNow(parts: TransportParts, choice: Speaking): Promise<Held> {
  const nowMs = Date.now();
  if (choice.kind === 'given') return givenCertificate(choice, nowMs);
  const { folder, kitchen, host, also } = parts;
  return ownCertificate({ folder, kitchen, nowMs, names: hostNames(host, also) });
}

function keepGood(parts: TransportParts, choice: Speaking, take: (held: Held) => void): void {
  const { report, closing } = parts;
  const looking = setInterval(async () => {
    try {
      const held = await certificateNow(parts, choice);
      for (const what of held.lines) report({ level: 'warning', what });
      take(held);
    } catch (fault) {
      report({ level: 'fault', what: 'the certificate could not be renewed', fault });
    }
  }, LOOK_AGAIN_MS);
  looking.unref();
  closing.add(() => clearInterval(looking));
}
