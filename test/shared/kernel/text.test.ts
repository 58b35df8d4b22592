import { expect, it } from 'vitest';
import { textOf } from '../../../shared/kernel/index.ts';

const join = ([a, b]: readonly string[]) => `${a} · ${b}`;

it('a text made of others speaks every language that one of them has', () => {
  expect(textOf([{ en: 'Ribs', es: 'Costillas' }, { en: 'Noon' }], join)).toEqual({
    en: 'Ribs · Noon',
    es: 'Costillas · Noon',
  });
});

it('a text made of English ones alone is English', () => {
  expect(textOf([{ en: 'Ribs' }, { en: 'Noon' }], join)).toEqual({ en: 'Ribs · Noon' });
});
