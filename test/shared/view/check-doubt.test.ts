import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius } from '../../../shared/kernel/index.ts';
import { doubtOf } from '../../../shared/view/index.ts';

const hot = { atLeastC: celsius(57.222), atMostC: null };
const cold = { atLeastC: null, atMostC: celsius(5) };

describe('a number beside its limit', () => {
  it('is doubted where it was likely read in the other unit', () => {
    expect(doubtOf(74, '°F', hot)).toMatchObject({ kind: 'other-unit', otherC: 74 });
    expect(doubtOf(4, '°F', cold)).toMatchObject({ kind: 'other-unit', otherC: 4 });
    expect(doubtOf(165, '°C', hot)).toMatchObject({ kind: 'other-unit', typedC: null });
    expect(doubtOf(41, '°C', cold)?.kind).toBe('other-unit');
  });

  it('is doubted where no probe in food shows it', () => {
    expect(doubtOf(400, '°F', hot)).toEqual({ kind: 'impossible' });
    expect(doubtOf(999, '°C', cold)).toEqual({ kind: 'impossible' });
  });

  it('is taken as it is where it only breaks its limit', () => {
    expect(doubtOf(131, '°F', hot)).toBeNull();
    expect(doubtOf(50, '°F', cold)).toBeNull();
    expect(doubtOf(9, '°C', cold)).toBeNull();
  });

  it('is never doubted where it keeps its limit as it usually is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 135, max: 212 }), fc.integer({ min: 28, max: 41 }), (f, c) => {
        expect(doubtOf(f, '°F', hot)).toBeNull();
        expect(doubtOf(c, '°F', cold)).toBeNull();
      }),
    );
  });
});
