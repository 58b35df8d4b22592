import { describe, expect, it } from 'vitest';
import { whatIfSchema } from '../../../shared/protocol/index.ts';

const stay = 'ribs-1/stay';
const read = (message: object) => whatIfSchema().safeParse(message);

describe('what a program may ask before anybody does it', () => {
  it.each([
    [{ fireByF: 18 }, { kind: 'fire', byK: 10 }],
    [{ fireByK: -5 }, { kind: 'fire', byK: -5 }],
    [{ wrapNow: 'paper' }, { kind: 'wrap', wrap: 'paper' }],
    [{ moveTo: 'b/2' }, { kind: 'move', to: 'b/2' }],
    [{ earlierByMin: 20 }, { kind: 'earlier', byS: 1200 }],
  ])('is %j', (asked, whatIf) => {
    const found = read({ stay, ...asked });
    expect(found.data?.stay).toBe(stay);
    expect(found.data?.whatIf.kind).toBe(whatIf.kind);
    for (const [key, value] of Object.entries(whatIf)) {
      const is = (found.data?.whatIf as Record<string, unknown> | undefined)?.[key];
      if (typeof value === 'number') expect(is).toBeCloseTo(value, 9);
      else expect(is).toBe(value);
    }
  });

  it.each([
    {},
    { fireByF: 15, wrapNow: 'foil' },
    { fireByK: 200 },
    { wrapNow: 'none' },
    { earlierByMin: 0 },
    { earlierByMin: 2.5 },
    { earlierByMin: 24 * 60 },
  ])('is not %j', (asked) => {
    expect(read({ stay, ...asked }).success).toBe(false);
  });
});
