import { createHash } from 'node:crypto';
import type { Head } from './event-log.ts';

/** The hash that the first entry follows. */
const BEFORE_ALL = '0'.repeat(64);

/** Where a log stands that nothing was written to and nobody has claimed. */
export const EMPTY_HEAD: Head = { seq: 0, hash: BEFORE_ALL, epoch: '' };

/**
 * The hash of an entry: SHA-256 (FIPS 180-4) over the 32 bytes of the hash before, then the entry's
 * own bytes.
 */
export function linkHash(before: string, bytes: Uint8Array): string {
  return createHash('sha256').update(before, 'hex').update(bytes).digest('hex');
}
