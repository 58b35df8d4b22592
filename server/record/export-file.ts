import { canonical } from '../../shared/kernel/index.ts';
import type { DayTold } from '../../shared/record/index.ts';
import { EMPTY_HEAD, type EventLog } from '../store/index.ts';
import type { Exported } from './export-schema.ts';
import type { Seal } from './seal.ts';
import { digestOf, type Signer } from './signing.ts';

/** A stretch of days with the entries that they were drawn from. */
export type Stretch = {
  readonly kitchen: string;
  readonly days: readonly DayTold[];
  readonly firstSeq: number;
  /** Null: to the end of the log. */
  readonly lastSeq: number | null;
  readonly seals: readonly Seal[];
};

type Body = Omit<Exported, 'digest' | 'signature'>;

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** The stretch as one JSON document, a thing a line, signed as a whole. */
export async function exportText(
  log: EventLog,
  { kitchen, days, firstSeq, lastSeq, seals }: Stretch,
  signer: Signer,
  madeAtMs: number,
): Promise<string> {
  const named = days.map(({ record }) => record.day as string);
  const body: Body = {
    head: {
      format: 'coalface-record-1',
      ...{ kitchen, from: named[0] ?? '', to: named.at(-1) ?? '' },
      madeAt: new Date(madeAtMs).toISOString(),
      ...{ before: await hashBefore(log, firstSeq), firstSeq, key: signer.publicKey },
    },
    days: days.map(({ record, evidence }) => ({
      day: record.day,
      recordDigest: digestOf(canonical(record)),
      evidenceDigest: digestOf(canonical(evidence)),
      ...{ record, evidence },
    })),
    entries: await entriesOf(log, firstSeq, lastSeq),
    seals: [...seals],
  };
  const lines = linesOf(body);
  const digest = digestOf(lines);
  return `${lines}${tailOf(digest, signer.sign(digest))}`;
}

async function hashBefore(log: EventLog, seq: number): Promise<string> {
  if (seq === 1) return EMPTY_HEAD.hash;
  for await (const entry of log.read(seq - 1)) return entry.hash;
  return EMPTY_HEAD.hash;
}

async function entriesOf(log: EventLog, from: number, to: number | null) {
  const entries: Exported['entries'] = [];
  for await (const { seq, hash, bytes } of log.read(from)) {
    if (to !== null && seq > to) break;
    entries.push({ seq, hash, bytes: utf8.decode(bytes) });
  }
  return entries;
}

/** How the lines before the digest are written: in one way, so that a byte is where it is. */
export function linesOf({ head, days, entries, seals }: Body): string {
  const list = (name: string, items: readonly unknown[]) =>
    `"${name}":[\n${items.map(canonical).join(',\n')}\n],\n`;
  return [
    `{\n"head":${canonical(head)},\n`,
    list('days', days),
    list('entries', entries),
    list('seals', seals),
  ].join('');
}

/** The last two lines. */
export const tailOf = (digest: string, signature: string) =>
  `"digest":"${digest}",\n"signature":"${signature}"\n}\n`;
