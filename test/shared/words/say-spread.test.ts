import { describe, expect, it } from 'vitest';
import { minutes, seconds } from '../../../shared/kernel/index.ts';
import { saySpread } from '../../../shared/words/index.ts';

const en = { language: 'en' } as const;
const es = { language: 'es' } as const;

describe('the spread of a service in words', () => {
  it('says both ends of eight of ten cases', () => {
    const spread = { lowS: minutes(-20), highS: minutes(35) };
    expect(saySpread(spread, en)).toBe('as the cooks go, 8 of 10: 20 min late to 35 min to spare');
    expect(saySpread(spread, es)).toBe(
      'según la cocción, 8 de 10: de 20 min de retraso a 35 min de margen',
    );
  });

  it('says that a cook may never be done, and that nothing is left', () => {
    expect(saySpread({ lowS: null, highS: seconds(20) }, en)).toBe(
      'as the cooks go, at best nothing to spare, and it may never stand ready',
    );
    expect(saySpread({ lowS: null, highS: null }, es)).toBe(
      'según la cocción, quizá nunca esté listo',
    );
  });
});
