import { z } from 'zod';
import { sealSchema } from './seal.ts';

const hex = z.string().regex(/^[0-9a-f]{64}$/);

/** The first line of an exported record. */
const headSchema = z.strictObject({
  format: z.literal('coalface-record-1'),
  kitchen: z.string(),
  from: z.string(),
  to: z.string(),
  madeAt: z.string(),
  /** Of the entry before the first, noughts before all. */
  before: hex,
  firstSeq: z.int().positive(),
  key: z.string(),
});

const daySchema = z.strictObject({
  day: z.string(),
  /** Digests of what follows, as canonical JSON. */
  recordDigest: hex,
  evidenceDigest: hex,
  record: z.unknown(),
  evidence: z.unknown(),
});

const entrySchema = z.strictObject({
  seq: z.int().positive(),
  hash: hex,
  /** As stored: canonical JSON. */
  bytes: z.string(),
});

/** An exported record: what is said of the days, the entries it is drawn from, and their seals. */
export const exportSchema = z.strictObject({
  head: headSchema,
  days: z.array(daySchema),
  entries: z.array(entrySchema),
  seals: z.array(sealSchema),
  /** Of all lines before this one. */
  digest: hex,
  signature: z.string(),
});

export type Exported = z.infer<typeof exportSchema>;
