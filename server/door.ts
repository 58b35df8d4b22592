import { createServer } from 'node:http';
import express from 'express';
import type { DayState } from '../shared/day/index.ts';
import { standardsOf } from '../shared/view/index.ts';
import { BUILT_SCREENS } from './built.mjs';
import { CannotStart } from './cannot-start.ts';
import type { Closing } from './closing.ts';
import type { AskWhatIf } from './forecast/index.ts';
import {
  createApp,
  type FirstWordsParts,
  faultsDoor,
  firstWords,
  installDoors,
  notUnderstood,
  ourPages,
  planDoors,
  readingsDoor,
  recordDoors,
  whatIfDoor,
  whoDoors,
} from './http/index.ts';
import type { Hub } from './hub/index.ts';
import { addresses, listen, secureAddresses } from './listen.ts';
import type { PlanDesk } from './plan-desk/index.ts';
import type { TakeReadings } from './readings/index.ts';
import type { RecordDesk } from './record/index.ts';
import type { Report } from './report.ts';
import { screensOf } from './screens.ts';
import { openEdge } from './socket/index.ts';
import type { Transport } from './transport/index.ts';
import type { Who } from './who/index.ts';

export type Door = {
  readonly address: string;
  /** Where each screen is, for a person to read. */
  readonly lines: readonly string[];
};

type DoorTools = {
  readonly transport: Transport;
  readonly who: Who;
  readonly planDesk: PlanDesk;
  readonly recordDesk: RecordDesk;
  readonly take: TakeReadings;
  readonly whatIf: AskWhatIf;
  readonly closing: Closing;
  readonly report: Report;
};

/** Serves the screens of a hub, over HTTP and over sockets. */
export async function openDoor(
  hub: Hub<DayState>,
  { host, port }: { readonly host: string; readonly port: number | null },
  { transport, who, planDesk, recordDesk, take, whatIf, closing, report }: DoorTools,
): Promise<Door> {
  const kitchen = () => hub.state.plan?.kitchen;
  const screens = () => {
    const known = kitchen();
    return known ? screensOf(known) : [];
  };
  const { names, tls, isSafe } = transport;
  const doors = express
    .Router()
    .use(ourPages(names, report))
    .use('/plan', planDoors({ desk: planDesk, entitled: who.entitled }))
    .use('/readings', readingsDoor({ take, reader: who.reader }))
    .use('/what-if', whatIfDoor({ ask: whatIf, reader: who.reader }))
    .use('/faults', faultsDoor({ me: who.me, report }))
    .use('/record', recordDoors({ desk: recordDesk, entitled: who.entitled }))
    .use(whoDoors({ who, report }))
    .use(notUnderstood);
  const health = () => hub.health;
  const standards = () => {
    const { plan } = hub.state;
    return plan && standardsOf(plan.catalogue, plan.kitchen);
  };
  let bound = 0;
  // Asked anew each time: the network may give this machine another address while it runs.
  const safely = () => (tls ? secureAddresses(host, bound, tls.name) : []);
  const install = installDoors({ tls, addresses: safely });
  const app = createApp({
    dist: BUILT_SCREENS,
    health,
    screens,
    standards,
    install,
    firstWords: firstWords({ dist: BUILT_SCREENS, look: lookerAt(hub, who), names, report }),
    doors,
    report,
  });
  const http = createServer(app);
  transport.serve(http);
  const accept = seenBy(who, hub.accept);
  const edge = openEdge(http, { accept, screenOf: who.screenOf, names, isSafe, report });
  closing.add(async () => {
    await hub.rest();
    http.closeAllConnections();
    await edge.close();
  });
  const listening = await listen(http, host, port);
  if (!listening.ok) throw new CannotStart(listening.why);
  const { insteadOf } = listening;
  bound = listening.port;
  const plain = addresses(host, bound);
  const [address = '', ...others] = tls ? plain.slice(-1) : plain;
  return {
    address,
    lines: [
      ...(insteadOf === null
        ? []
        : [
            `Port ${insteadOf} is taken by another program, so this hub is at port ${bound}: ` +
              'the addresses below count.',
          ]),
      `All screens: ${address}/`,
      ...screens().map((screen) => `  ${screen.name.en}: ${address}${screen.path}`),
      ...others.map((other) => `The same from this machine: ${other}/`),
      ...networkLines(tls, safely()),
    ],
  };
}

/** What a page may show before its scripts say which screen it is. */
const lookerAt =
  (hub: Hub<DayState>, who: Who): FirstWordsParts['look'] =>
  (face, key) => {
    const screenId = who.screenOfPage(key);
    return screenId && hub.look({ screenId, face });
  };

/** How the tablets of the kitchen come in. */
function networkLines(tls: Transport['tls'], safely: readonly string[]): string[] {
  const [first = ''] = safely;
  const authority = tls?.authority();
  return [
    ...safely.map((each) => `From other devices: ${each}/`),
    ...(authority && first !== ''
      ? [
          `  A tablet that warns of it opens ${first.replace(/^https:/, 'http:')}/ first, and`,
          '  installs this kitchen’s certificate, whose fingerprint (SHA-256) is',
          `  ${authority.fingerprint}`,
        ]
      : []),
  ];
}

/** Writes down when a screen was last there. */
function seenBy(who: Who, accept: Hub<DayState>['accept']): Hub<DayState>['accept'] {
  return (link) => {
    const { screenId } = link.hello;
    who.saw(screenId);
    const listener = accept(link);
    return {
      ...listener,
      gone: () => {
        listener.gone();
        who.saw(screenId);
      },
    };
  };
}
