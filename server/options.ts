import { isIP } from 'node:net';
import { parseArgs } from 'node:util';
import { isLocalDay, type LocalDay, type WallTime } from '../shared/kernel/index.ts';
import type { StartFrom } from './starter/index.ts';
import type { TlsChoice } from './transport/index.ts';

export const USUAL_PORT = 4600;

export const HELP = `Coalface: a kitchen display and task board for a barbecue line

  npm start                         a demo day that is happening now, thrown away at the end
  npm start -- --data my-kitchen    a real kitchen, kept in the folder my-kitchen
  npm start -- --demo my-demo       the demo, kept in the folder my-demo and gone on with next time

Options
  --data DIR        Where the kitchen is: kitchen.json, catalogue.json, plans/YYYY-MM-DD.json, and
                    its log in log.sqlite. An empty folder is given a small kitchen to start from:
                    two smokers, three hands, three dishes, and a plan for tomorrow.
                    A plan that is changed there is taken up at once, if it is sound.
  --all-dishes      An empty folder is given every dish of the demo to choose from, not three.
  --demo DIR        As --data, for the demo.
  --demo-speed N    The clock runs N times as fast, to try a day out. Times in the log are that
                    clock's, so give a kitchen that is tried out a folder of its own.
  --demo-from WHEN  What the clock of that folder shows at its first start, such as 2026-11-29T09:30
                    on the kitchen's own wall: a plan can be tried out before its day.
  --port N          The port to listen on (usually ${USUAL_PORT}, or the next that is free; 0: any).
  --lan             Lets the other devices on this network in. Without it only this machine may:
                    what a desk has let in may tap, in a demo whoever reaches the hub.
  --host ADDRESS    As --lan, but on this one address of the machine.
  --plain           Speaks plain HTTP on the network, as behind a proxy that speaks TLS. Without it
                    the hub is its own authority there: tablets install its certificate once, from
                    a page that it shows them. See docs/transport.md.
  --cert FILE       A certificate that somebody else signed, as PEM: the chain, the hub’s own first.
  --key FILE        Its key, as PEM. Both files are read again every hour.
  --name NAME       A name or address by which screens find the hub, beside what this machine knows
                    of itself. May be said more than once.
  --open            Asks no screen who it is: whoever reaches the hub may do what the page they open
                    may. A demo is always so; a kitchen lets in only what its desk has let in.
  --mqtt URL        Takes readings from thermometers over MQTT, from the broker at URL, such as
                    mqtt://192.168.1.9:1883. Without it none is asked. See docs/cook.md.
  --claim           Prints a new owner’s code, for when no desk can be used any more.
  --help            This.

Ctrl-C stops it. What a screen shows as kept is on disk by then.
`;

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

const known = {
  data: { type: 'string' },
  demo: { type: 'string' },
  'demo-speed': { type: 'string' },
  'demo-from': { type: 'string' },
  port: { type: 'string' },
  host: { type: 'string' },
  lan: { type: 'boolean' },
  plain: { type: 'boolean' },
  cert: { type: 'string' },
  key: { type: 'string' },
  name: { type: 'string', multiple: true },
  open: { type: 'boolean' },
  mqtt: { type: 'string' },
  claim: { type: 'boolean' },
  'all-dishes': { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** Reads the command line, or says all that is wrong with it. */
export function readOptions(args: readonly string[]): OptionsRead {
  const given = parse(args);
  if (typeof given === 'string') return { ok: false, help: false, wrong: [given] };
  if (given.help) return { ok: false, help: true };
  const speed = Number(given['demo-speed'] ?? 1);
  const port = given.port === undefined ? null : Number(given.port);
  const wrong = [
    given.data !== undefined && given.demo !== undefined && '--data or --demo, not both',
    given.lan && given.host !== undefined && '--lan or --host, not both',
    !(speed >= 1 && speed <= 3600) && '--demo-speed is a number from 1 to 3600',
    ...demoFromFaults(given),
    port !== null &&
      !(Number.isInteger(port) && port >= 0 && port < 65_536) &&
      '--port is a whole number from 0 to 65535',
    given.host !== undefined &&
      isIP(given.host) === 0 &&
      '--host is an address such as 192.168.1.5',
    (given.cert === undefined) !== (given.key === undefined) && '--cert and --key belong together',
    given.cert !== undefined && given.plain && '--plain or --cert, not both',
    given.name?.some((each) => !/^[\w.:-]+$/.test(each)) &&
      '--name is a name or an address, such as kitchen.example, without https:// or a port',
    given.mqtt !== undefined &&
      !/^mqtts?:\/\/[^/]/.test(given.mqtt) &&
      '--mqtt is an address such as mqtt://192.168.1.9:1883',
    given.claim &&
      (given.open || given.data === undefined) &&
      '--claim is for a kitchen (--data) that is not --open',
    given['all-dishes'] &&
      given.data === undefined &&
      '--all-dishes is for a new kitchen (--data); a demo has them all',
    given.data === '' && '--data names a folder',
    given.demo === '' && '--demo names a folder',
  ].filter((fault) => typeof fault === 'string');
  if (wrong.length > 0) return { ok: false, help: false, wrong };
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
  const demoFrom = readDemoFrom(given['demo-from']);
  const clock = { speed, ...(demoFrom && { demoFrom }) };
  const options = { folder, ...clock, port, host, isOpen, isClaiming, ...safety, ...mqtt };
  return { ok: true, options };
}

const readDemoFrom = (word = ''): DemoFrom | null => {
  const [day = '', time = ''] = word.split('T');
  return isLocalDay(day) && /^([01]\d|2[0-3]):[0-5]\d$/.test(time) ? { day, time } : null;
};

function demoFromFaults(given: { readonly data?: string; readonly 'demo-from'?: string }) {
  const word = given['demo-from'];
  if (word === undefined) return [];
  return [
    readDemoFrom(word) === null && '--demo-from is a day and a time such as 2026-11-29T09:30',
    given.data === undefined && '--demo-from is for a kitchen (--data); a demo begins at its noon',
  ];
}

/** On this machine alone nobody listens: there plain HTTP is as good, and browsers hold it so. */
function tlsOf(
  { plain, cert, key }: { plain?: boolean; cert?: string; key?: string },
  host: string,
): Pick<Options, 'tls'> {
  if (cert !== undefined && key !== undefined) return { tls: { kind: 'given', cert, key } };
  return plain || /^127\.|^::1$/.test(host) ? {} : { tls: { kind: 'own' } };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: known, strict: true }).values;
  } catch (fault) {
    return fault instanceof Error ? fault.message : String(fault);
  }
}
