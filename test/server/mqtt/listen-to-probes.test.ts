import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { createServer, type Server } from 'node:net';
import { Aedes } from 'aedes';
import { connectAsync, type MqttClient } from 'mqtt';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { listenToProbes, type Probes } from '../../../server/mqtt/index.ts';
import type { ReportLine } from '../../../server/report.ts';
import type { SlotId, TaskId } from '../../../shared/kernel/index.ts';
import type { SentReading } from '../../../shared/protocol/index.ts';

let broker: Aedes;
let server: Server;
let probe: MqttClient;
let probes: Probes;
let taken: SentReading[];
let reports: ReportLine[];

beforeEach(async () => {
  broker = await Aedes.createBroker();
  server = createServer(broker.handle);
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const url = `mqtt://127.0.0.1:${(server.address() as AddressInfo).port}`;
  taken = [];
  reports = [];
  probe = await connectAsync(url);
  await probe.publishAsync('coalface/air/a', '99 °C', { qos: 1, retain: true });
  probes = listenToProbes({
    url,
    take: async (readings) => {
      taken.push(...readings);
      return readings.map(() => ({ found: 'sound' }));
    },
    stayIn: (slot) => (slot === ('a/2' as SlotId) ? ('ribs-1/stay' as TaskId) : null),
    report: (line) => reports.push(line),
  });
  await probes.heard;
});
afterEach(async () => {
  await probes.close();
  await probe.endAsync(true);
  server.close();
  await new Promise<void>((resolve) => broker.close(() => resolve()));
});

/** Sends, and waits until the last of it was heard: a broker keeps the order. */
async function sent(...messages: readonly (readonly [topic: string, payload: string])[]) {
  for (const [topic, payload] of messages) {
    await probe.publishAsync(`coalface/${topic}`, payload, { qos: 1 });
  }
  await probe.publishAsync('coalface/air/last', '1 °C', { qos: 1 });
  while (taken.at(-1)?.tempC !== 1) await new Promise(setImmediate);
  return taken.slice(0, -1);
}

it('hears the air of a smoker, the core of a load, and of whatever lies in a rack', async () => {
  const at = '2026-11-25T14:05:00Z';
  const heard = await sent(
    ['air/a', '250 °F'],
    ['core/ribs-1/stay', JSON.stringify({ tempC: 71, at })],
    ['rack/a/2', '72 C'],
  );
  expect(heard).toEqual([
    { where: { kind: 'air', smoker: 'a' }, tempC: expect.closeTo(121.1, 1), at: null },
    { where: { kind: 'core', stay: 'ribs-1/stay' }, tempC: 71, at },
    { where: { kind: 'core', stay: 'ribs-1/stay' }, tempC: 72, at: null },
  ]);
  expect(reports).toEqual([]);
});

it('reports what makes no sense, and hears the next', async () => {
  const heard = await sent(
    ['air/a', '250'],
    ['air/a', '{"temp": 1}'],
    ['rack/b/9', '72 °C'],
    ['air/b', '120 °C'],
  );
  expect(heard).toMatchObject([{ where: { smoker: 'b' }, tempC: 120 }]);
  expect(reports.map(({ topic }) => topic)).toEqual([
    'coalface/air/a',
    'coalface/air/a',
    'coalface/rack/b/9',
  ]);
});

it('takes nothing that the broker kept from before: it may be of yesterday', async () => {
  expect(await sent()).toEqual([]);
});
