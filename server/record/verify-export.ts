import { canonical } from '../../shared/kernel/index.ts';
import { linkHash } from '../store/index.ts';
import { linesOf, tailOf } from './export-file.ts';
import { type Exported, exportSchema } from './export-schema.ts';
import { faultOfSeal } from './seal.ts';
import { digestOf, fingerprintOf, isSignedBy } from './signing.ts';

/** What an export is not as it was made, and where. */
export type ExportFault =
  /** Null: it is no JSON at all; else what of it is not as a record has it, '' for the whole. */
  | { readonly kind: 'not-a-record'; readonly other: string | null }
  | { readonly kind: 'line'; readonly line: number }
  | { readonly kind: 'entry' | 'missing-entry'; readonly seq: number; readonly line: number }
  /** What is said of a day is not what was drawn from its entries. */
  | { readonly kind: 'day'; readonly day: string }
  /** The seal is not as it was made, or one before it is gone. */
  | { readonly kind: 'seal'; readonly day: string; readonly n: number }
  /** The entries hold among themselves, and are not those that were signed. */
  | { readonly kind: 'rewritten'; readonly day: string; readonly sealedAt: string }
  | { readonly kind: 'unsealed'; readonly day: string }
  | { readonly kind: 'digest' }
  | { readonly kind: 'signature' }
  | { readonly kind: 'other-key'; readonly found: string };

export type Verified = {
  readonly faults: readonly ExportFault[];
  readonly exported: Exported | null;
};

/** Looks an exported record through, with nothing but itself; and a key, where one is known. */
export function verifyExport(text: string, key: string | null = null): Verified {
  const read = parsed(text);
  if ('kind' in read) return { faults: [read], exported: null };
  const misplaced = otherLine(text, read);
  const found = fingerprintOf(read.head.key);
  const faults: ExportFault[] = [
    ...(misplaced === null ? [] : [{ kind: 'line' as const, line: misplaced }]),
    ...dayFaults(read),
    ...entryFaults(read),
    ...sealFaults(read),
    ...(key === null || bare(key) === bare(found) ? [] : [{ kind: 'other-key' as const, found }]),
  ];
  const isWhole = digestOf(linesOf(read)) === read.digest;
  // Where it has no better name.
  if (!isWhole && faults.length === 0) faults.push({ kind: 'digest' });
  if (!isSignedBy(read.head.key, read.digest, read.signature)) faults.push({ kind: 'signature' });
  return { faults, exported: read };
}

const bare = (fingerprint: string) => fingerprint.replace(/\s/g, '').toLowerCase();

function parsed(text: string): Exported | Extract<ExportFault, { kind: 'not-a-record' }> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { kind: 'not-a-record', other: null };
  }
  const read = exportSchema.safeParse(json);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  return { kind: 'not-a-record', other: issue?.path.join('.') ?? '' };
}

/** The first line that is not written as it would be, from 1 on; null where all are. */
function otherLine(text: string, read: Exported): number | null {
  const made = `${linesOf(read)}${tailOf(read.digest, read.signature)}`;
  if (made === text) return null;
  const [found, wanted] = [text.split('\n'), made.split('\n')];
  const at = wanted.findIndex((line, i) => line !== found[i]);
  return (at < 0 ? wanted.length : at) + 1;
}

function dayFaults({ days }: Exported): ExportFault[] {
  return days.flatMap(({ day, record, recordDigest, evidence, evidenceDigest }) => {
    const isSo =
      digestOf(canonical(record)) === recordDigest &&
      digestOf(canonical(evidence)) === evidenceDigest &&
      (record as { readonly day?: unknown } | null)?.day === day;
    return isSo ? [] : [{ kind: 'day' as const, day }];
  });
}

/** Line of the first entry, after the head, the days and what opens the list. */
const linesBefore = ({ days }: Exported) => 2 + days.length + 3;

function entryFaults(read: Exported): ExportFault[] {
  const { head, entries } = read;
  let { before } = head;
  let seq = head.firstSeq;
  for (const [i, entry] of entries.entries()) {
    const line = linesBefore(read) + i + 1;
    if (entry.seq !== seq) return [{ kind: 'missing-entry', seq, line }];
    if (linkHash(before, Buffer.from(entry.bytes, 'utf8')) !== entry.hash) {
      return [{ kind: 'entry', seq, line }];
    }
    before = entry.hash;
    seq += 1;
  }
  return [];
}

function sealFaults({ days, entries, seals }: Exported): ExportFault[] {
  const hashes = new Map(entries.map(({ seq, hash }) => [seq, hash]));
  const faults = seals.flatMap((seal, i): ExportFault[] => {
    const before = seals[i - 1];
    const { day, n, sealedAt } = seal;
    const fault = faultOfSeal(seal, before ?? null);
    // What came before the first is not in this file.
    if (fault === 'forged' || (fault === 'missing' && before)) return [{ kind: 'seal', day, n }];
    if (hashes.get(seal.lastSeq) !== seal.hash) return [{ kind: 'rewritten', day, sealedAt }];
    const told = days.find((each) => each.day === day);
    const isLast = seals.findLast((each) => each.day === day) === seal;
    const isTold = told?.recordDigest === seal.record && told.evidenceDigest === seal.evidence;
    return isLast && !isTold ? [{ kind: 'day', day }] : [];
  });
  // The last day may still run.
  const open = days.slice(0, -1).filter(({ day }) => !seals.some((seal) => seal.day === day));
  const unsealed = open.map(({ day }): ExportFault => ({ kind: 'unsealed', day }));
  return [...faults, ...unsealed];
}
