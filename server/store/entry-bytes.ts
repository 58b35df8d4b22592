import type { Event } from '../../shared/day/index.ts';
import { canonical } from '../../shared/kernel/index.ts';
import { type Lifted, lift } from './lift.ts';

const utf8 = new TextEncoder();
const strictUtf8 = new TextDecoder('utf-8', { fatal: true });

/** What is stored of an event: its canonical JSON in UTF-8. */
export function toBytes(event: Event): Uint8Array {
  return utf8.encode(canonical(event));
}

/** The event in these bytes, lifted to today's shape. */
export function fromBytes(bytes: Uint8Array): Lifted {
  try {
    return lift(JSON.parse(strictUtf8.decode(bytes)));
  } catch {
    return { ok: false, why: 'unreadable' };
  }
}
