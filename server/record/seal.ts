import { z } from 'zod';
import { canonical } from '../../shared/kernel/index.ts';
import { digestOf, isSignedBy, type Signer } from './signing.ts';

/**
 * What a hub signs of a day: the head of the chain as the day left it, and what was drawn from it.
 * A day that is opened again after its closing, and is closed again, has two.
 */
export type Seal = z.infer<typeof sealSchema>;

const hex = z.string().regex(/^[0-9a-f]{64}$/);

export const sealSchema = z.strictObject({
  /** From 1 on, with none left out. */
  n: z.int().positive(),
  day: z.string(),
  /** `turned`: another day has begun, and no entry of this one follows. */
  why: z.enum(['closed', 'turned']),
  firstSeq: z.int().positive(),
  lastSeq: z.int().positive(),
  /** Of the last entry. */
  hash: hex,
  /** UTC, ISO 8601. */
  sealedAt: z.string(),
  /** Null where nobody closed the day, or nobody is known. */
  closedBy: z.string().nullable(),
  /** Digests of what is kept beside it, as canonical JSON. */
  record: hex,
  evidence: hex,
  carry: hex,
  /** Digest of the seal before, noughts before the first: none can be left out, none put in. */
  previous: hex,
  key: z.string(),
  signature: z.string(),
});

const BEFORE_ALL = '0'.repeat(64);

/** A new seal after the last. */
export function sealed(
  body: Omit<Seal, 'n' | 'previous' | 'key' | 'signature'>,
  last: Seal | null,
  signer: Signer,
): Seal {
  const previous = last ? digestOf(canonical(last)) : BEFORE_ALL;
  const whole = { ...body, n: (last?.n ?? 0) + 1, previous, key: signer.publicKey };
  return { ...whole, signature: signer.sign(canonical(whole)) };
}

/** What is wrong with a seal by itself or after the one before; null where it is as it was made. */
export function faultOfSeal(seal: Seal, before: Seal | null): 'forged' | 'missing' | null {
  const { signature, ...whole } = seal;
  if (!isSignedBy(seal.key, canonical(whole), signature)) return 'forged';
  const previous = before ? digestOf(canonical(before)) : BEFORE_ALL;
  return seal.n === (before?.n ?? 0) + 1 && seal.previous === previous ? null : 'missing';
}
