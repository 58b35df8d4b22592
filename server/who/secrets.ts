import { createHash, randomBytes, randomInt, scrypt, timingSafeEqual } from 'node:crypto';
import { promisify } from 'node:util';

/**
 * Nothing that is misread for another on a wall or over a shoulder, no vowel to spell with, and
 * nothing so wide that six do not fit on a phone.
 */
const LETTERS = 'CDFGHJKLNPQRTVXY34679';

/**
 * A code for people to read and type: 21 letters, so that six carry 26 bits and eight 35.
 * @example newCode(6) //=> 'K7QD4M'
 */
export function newCode(length: number): string {
  return Array.from({ length }, () => LETTERS[randomInt(LETTERS.length)]).join('');
}

/** A code as somebody typed it: in any case, with any gaps. */
export const typedCode = (text: string) => text.toUpperCase().replace(/[^A-Z0-9]/g, '');

/** What only its holder knows: 256 bits. */
export const newToken = () => randomBytes(32).toString('base64url');

/**
 * What is kept of a token. A plain digest is enough: nobody can try out 256 bits, so nothing has to
 * be slow.
 */
export const digest = (token: string) => createHash('sha256').update(token).digest('hex');

/** Compares in the same time wherever the first difference is. */
export function isSame(a: string, b: string): boolean {
  return timingSafeEqual(Buffer.from(digest(a), 'hex'), Buffer.from(digest(b), 'hex'));
}

const stretched = promisify<Buffer | string, Buffer, number, ScryptCost, Buffer>(scrypt);
type ScryptCost = { readonly N: number; readonly r: number; readonly p: number };

/**
 * scrypt (RFC 7914): 16 MiB and some tens of milliseconds for each try. Six digits are few all the
 * same; what protects them is that tries are counted and that only the hub can read the file.
 */
const COST: ScryptCost = { N: 2 ** 14, r: 8, p: 1 };
const HASH_BYTES = 32;

export type PinHash = { readonly salt: string; readonly hash: string };

export async function hashPin(pin: string, salt = randomBytes(16)): Promise<PinHash> {
  const hash = await stretched(pin, salt, HASH_BYTES, COST);
  return { salt: salt.toString('hex'), hash: hash.toString('hex') };
}

export async function isPin(pin: string, { salt, hash }: PinHash): Promise<boolean> {
  const again = await hashPin(pin, Buffer.from(salt, 'hex'));
  return timingSafeEqual(Buffer.from(again.hash, 'hex'), Buffer.from(hash, 'hex'));
}

export const PIN_LEAST = 4;
export const PIN_MOST = 12;

/** Whether nobody would guess it first: not one digit over and over, not digits in a row. */
export function isGoodPin(pin: string): boolean {
  if (!/^\d+$/.test(pin) || pin.length < PIN_LEAST || pin.length > PIN_MOST) return false;
  const steps = [...pin].slice(1).map((digit, index) => Number(digit) - Number(pin[index]));
  return !([0, 1, -1] as const).some((step) => steps.every((each) => each === step));
}
