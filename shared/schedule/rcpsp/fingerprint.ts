import { cell } from './cell.ts';

/** Offset and prime of the 32-bit hash FNV-1a (G. Fowler, L. C. Noll and P. Vo). */
const OFFSET = 0x811c9dc5;
const PRIME = 0x01000193;

/**
 * A number below 2^52 that is the same for the same values in the same order, and very rarely for
 * others. A chance likeness costs a search one candidate, never a wrong answer.
 */
export function fingerprint(values: Int32Array): number {
  let high = OFFSET;
  let low = 0;
  for (let i = 0; i < values.length; i++) {
    high = Math.imul(high ^ cell(values, i), PRIME);
    low = (Math.imul(low, 31) + cell(values, i)) | 0;
  }
  return (high >>> 0) * 2 ** 20 + ((low ^ (low >>> 12)) & (2 ** 20 - 1));
}
