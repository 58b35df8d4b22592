import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fitOf } from '../../../client/pass/name-fit.ts';

const ribs = { name: 'Pulled shoulder', allergens: 'mustard' };

it('makes a name small before it takes two lines', () => {
  expect([500, 320, 250].map((wide) => fitOf(ribs, wide))).toEqual(['one', 'lean', 'long']);
});

it('never asks for less in more room', () => {
  const order = ['one', 'lean', 'long'];
  const words = fc.string({ minLength: 1, maxLength: 40 });
  const room = fc.double({ min: 0, max: 900, noNaN: true });
  fc.assert(
    fc.property(words, words, room, room, (name, allergens, one, other) => {
      const at = (wide: number) => order.indexOf(fitOf({ name, allergens }, wide));
      expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)));
    }),
  );
});
