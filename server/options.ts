import type { LocalDay, WallTime } from '../shared/kernel/index.ts';
import { dayAndTime, readWords } from './command-line.mjs';
import type { StartFrom } from './starter/index.ts';
import type { TlsChoice } from './transport/index.ts';

const ONLY_HERE = '127.0.0.1';

export type Options = {
  readonly folder: FolderChoice;
  readonly speed: number;
  /** What the kitchen's wall clock shows as a folder is first started; left out: what it is. */
  readonly demoFrom?: DemoFrom;
  /** Null: the usual one, or the next that is free. */
  readonly port: number | null;
  readonly host: string;
  /** How it speaks TLS; left out: not at all. */
  readonly tls?: TlsChoice;
  /** Names it goes by, beside those this machine knows of. */
  readonly names?: readonly string[];
  /** Every screen is let in. */
  readonly isOpen: boolean;
  /** The broker whose thermometers are heard; left out: none. */
  readonly mqtt?: string;
  /** The hub may be claimed anew. */
  readonly isClaiming: boolean;
};

/** A moment on the kitchen's own wall. */
export type DemoFrom = { readonly day: LocalDay; readonly time: WallTime };

export type FolderChoice =
  | { readonly kind: 'kitchen'; readonly path: string; readonly from?: StartFrom }
  /** Null: one that is thrown away. */
  | { readonly kind: 'demo'; readonly path: string | null };

export type OptionsRead =
  | { readonly ok: true; readonly options: Options }
  | { readonly ok: false; readonly help: true }
  | { readonly ok: false; readonly help: false; readonly wrong: readonly string[] };

/** Reads the command line, or says all that is wrong with it. */
export function readOptions(args: readonly string[]): OptionsRead {
  const words = readWords(args);
  if (words.help) return { ok: false, help: true };
  if ('wrong' in words) return { ok: false, help: false, wrong: words.wrong };
  const { given } = words;
  const speed = Number(given['demo-speed'] ?? 1);
  const port = given.port === undefined ? null : Number(given.port);
  const host = given.host ?? (given.lan ? '0.0.0.0' : ONLY_HERE);
  const folder: FolderChoice =
    given.data === undefined
      ? { kind: 'demo', path: given.demo ?? null }
      : {
          kind: 'kitchen',
          path: given.data,
          ...(given['all-dishes'] ? { from: 'all dishes' } : {}),
        };
  const isOpen = given.open === true || folder.kind === 'demo';
  const isClaiming = given.claim === true;
  const mqtt = given.mqtt === undefined ? {} : { mqtt: given.mqtt };
  const safety = { ...tlsOf(given, host), ...(given.name && { names: given.name }) };
  const demoFrom = dayAndTime(given['demo-from'] ?? '') as DemoFrom | null;
  const clock = { speed, ...(demoFrom && { demoFrom }) };
  const options = { folder, ...clock, port, host, isOpen, isClaiming, ...safety, ...mqtt };
  return { ok: true, options };
}

/** On this machine alone nobody listens: there plain HTTP is as good, and browsers hold it so. */
function tlsOf(
  { plain, cert, key }: { plain?: boolean; cert?: string; key?: string },
  host: string,
): Pick<Options, 'tls'> {
  if (cert !== undefined && key !== undefined) return { tls: { kind: 'given', cert, key } };
  return plain || /^127\.|^::1$/.test(host) ? {} : { tls: { kind: 'own' } };
}
