import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  digest,
  hashPin,
  isGoodPin,
  isPin,
  isSame,
  newCode,
  newToken,
  typedCode,
} from '../../../server/who/secrets.ts';

describe('a code', () => {
  it('has only letters and digits that no hand misreads, and is never the same twice', () => {
    const codes = Array.from({ length: 500 }, () => newCode(6));
    for (const code of codes) expect(code).toMatch(/^[CDFGHJKLNPQRTVXY34679]{6}$/);
    expect(new Set(codes).size).toBe(500);
  });

  it('carries at least the 20 bits that OWASP ASVS 5.0 §6.5 asks of an out-of-band code', () => {
    expect(Math.log2(21 ** 6)).toBeGreaterThan(20);
  });

  it('is understood however it is typed', () => {
    expect(typedCode('k7qd 4m')).toBe('K7QD4M');
    expect(typedCode('K7QD-4M39')).toBe('K7QD4M39');
  });
});

describe('secrets', () => {
  it('are the same only where every letter is, of any length', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (a, b) => {
        expect(isSame(a, b)).toBe(a === b);
        expect(isSame(a, a)).toBe(true);
      }),
    );
  });

  it('are tokens of 256 bits, of which the digest tells nothing', () => {
    const token = newToken();
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    expect(digest(token)).toMatch(/^[0-9a-f]{64}$/);
    expect(digest(token)).not.toContain(token);
  });
});

describe('a PIN', () => {
  it('is known again from its salted hash, and no other is', async () => {
    const kept = await hashPin('4093');
    expect(await isPin('4093', kept)).toBe(true);
    expect(await isPin('4094', kept)).toBe(false);
    expect((await hashPin('4093')).hash).not.toBe(kept.hash);
  });

  it.each(['123', '1234', '9876', '0000', '7777777', '12a4', '', '1234567890123'])(
    'is not %j, which is too short, too long or guessed first',
    (pin) => expect(isGoodPin(pin)).toBe(false),
  );

  it.each(['4093', '1357', '110011', '128374650912'])('may be %j', (pin) =>
    expect(isGoodPin(pin)).toBe(true),
  );
});
