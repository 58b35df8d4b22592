import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fitOf } from '../../../client/pass/name-fit.ts';

const ribs = { name: 'Pulled shoulder', bare: 'mustard', has: 'has mustard' };

it('drops a word beside a name first, then its size, and takes two lines last', () => {
  const fits = [500, 360, 320, 250].map((wide) => fitOf(ribs, wide));
  expect(fits).toEqual(['has', 'bare', 'lean', 'long']);
});

it('never asks for less in more room', () => {
  const order = ['has', 'bare', 'lean', 'long'];
  const words = fc.string({ minLength: 1, maxLength: 40 });
  const room = fc.double({ min: 0, max: 900, noNaN: true });
  fc.assert(
    fc.property(words, words, room, room, (name, bare, one, other) => {
      const at = (wide: number) => order.indexOf(fitOf({ name, bare, has: `has ${bare}` }, wide));
      expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)));
    }),
  );
});
