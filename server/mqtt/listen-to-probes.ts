import { connect, type MqttClient } from 'mqtt';
import type { SlotId, SmokerId, TaskId } from '../../shared/kernel/index.ts';
import { parseQuantity, quantityPattern } from '../../shared/kernel/index.ts';
import { readingsSchema, type SentReading } from '../../shared/protocol/index.ts';
import type { TakeReadings } from '../readings/index.ts';
import type { Report } from '../report.ts';

export type ProbeParts = {
  /** `mqtt://host:1883`, or `mqtts:` with a name and a password in it. */
  readonly url: string;
  readonly take: TakeReadings;
  /** The load that is in a rack now; null for none. */
  readonly stayIn: (slot: SlotId) => TaskId | null;
  readonly report: Report;
};

export type Probes = {
  /** Resolves once the broker has taken the subscription. */
  readonly heard: Promise<void>;
  close(): Promise<void>;
};

const TOPICS = ['coalface/air/#', 'coalface/core/#', 'coalface/rack/#'];

/** Nothing that a thermometer sends is longer. */
const LONGEST = 400;

/**
 * Hears thermometers over MQTT (OASIS, version 3.1.1): `coalface/air/SMOKER`, `coalface/core/STAY`,
 * or `coalface/rack/SMOKER/NUMBER` for whatever load lies there. Comes again by itself when the
 * broker was away; what makes no sense is reported, and the next is heard.
 */
export function listenToProbes({ url, take, stayIn, report }: ProbeParts): Probes {
  const client = connect(url, { reconnectPeriod: 5_000, clean: true });
  const host = new URL(url).host;
  client.on('error', (fault) =>
    report({ level: 'warning', what: 'the broker fails', host, fault }),
  );
  client.on('offline', () => report({ level: 'warning', what: 'the broker is away', host }));
  client.on('message', (topic, payload, { retain }) => {
    // What a broker kept from before has no time: it may be of yesterday.
    if (retain) return;
    const heard = readingOf(topic, payload.toString('utf8').slice(0, LONGEST), stayIn);
    if (heard) void keep(heard, topic);
    else report({ level: 'warning', what: 'a thermometer makes no sense', topic });
  });

  async function keep(reading: SentReading, topic: string) {
    try {
      const [taken] = await take([reading], null);
      if (taken?.found === 'sound') return;
      report({
        level: 'note',
        what: 'a reading is not as it should be',
        topic,
        found: taken?.found,
      });
    } catch (fault) {
      report({ level: 'fault', what: 'a reading could not be kept', topic, fault });
    }
  }

  return { heard: subscribed(client), close: () => client.endAsync(true) };
}

async function subscribed(client: MqttClient): Promise<void> {
  await new Promise<void>((resolve) => client.once('connect', () => resolve()));
  // The client subscribes again by itself whenever it comes back.
  await client.subscribeAsync(TOPICS, { qos: 1 });
}

function readingOf(
  topic: string,
  payload: string,
  stayIn: ProbeParts['stayIn'],
): SentReading | null {
  const [, kind, ...rest] = topic.split('/');
  const subject = rest.join('/');
  const temp = tempOf(payload);
  const where = placeOf(kind, subject, stayIn);
  if (!temp || !where) return null;
  const read = readingsSchema().safeParse({ ...temp, ...where });
  return (read.success && read.data[0]) || null;
}

function placeOf(kind: string | undefined, subject: string, stayIn: ProbeParts['stayIn']) {
  if (kind === 'air') return { smoker: subject as SmokerId };
  const stay = kind === 'core' ? (subject as TaskId) : stayIn(subject as SlotId);
  return stay && { stay };
}

/** `121 °C`, `250 °F`, or JSON with `tempC` or `tempF`, and `at`. A bare number says no unit. */
function tempOf(payload: string): object | null {
  const text = payload.trim().replace(/ ?°? ?([CF])$/, ' °$1');
  if (quantityPattern('temperature in degrees Celsius').test(text)) {
    return { tempC: parseQuantity('temperature in degrees Celsius', text) };
  }
  try {
    const json: unknown = JSON.parse(payload);
    return typeof json === 'object' ? json : null;
  } catch {
    return null;
  }
}
