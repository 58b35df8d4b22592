import { describe, expect, it } from 'vitest';
import type { WhoRefusal } from '../../../shared/day/index.ts';
import { type Language, type Say, sayRefusal, whoWords } from '../../../shared/words/index.ts';

const all: { readonly [Rule in WhoRefusal['rule']]: Extract<WhoRefusal, { rule: Rule }> } = {
  'screen-unknown': { rule: 'screen-unknown' },
  'screen-revoked': { rule: 'screen-revoked' },
  'screen-elsewhere': { rule: 'screen-elsewhere' },
  'not-the-desk': { rule: 'not-the-desk' },
  'needs-owner': { rule: 'needs-owner' },
  'needs-pin': { rule: 'needs-pin' },
  'wrong-pin': { rule: 'wrong-pin' },
  'poor-pin': { rule: 'poor-pin', least: 4, most: 12 },
  'wrong-code': { rule: 'wrong-code' },
  'code-over': { rule: 'code-over' },
  'too-many-tries': { rule: 'too-many-tries', waitS: 20 },
  'unknown-screen': { rule: 'unknown-screen' },
  'name-taken': { rule: 'name-taken', name: 'By the door' },
  'needs-station': { rule: 'needs-station' },
  'last-desk': { rule: 'last-desk' },
};

const say = (language: Language): Say => ({
  language,
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
});

describe('a refusal of who may do what', () => {
  it.each(Object.values(all))('is one whole sentence in each language: $rule', (refusal) => {
    const [english, spanish] = [sayRefusal(refusal, say('en')), sayRefusal(refusal, say('es'))];
    for (const sentence of [english, spanish]) expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
    expect(spanish).not.toBe(english);
  });

  it('says the amounts and the names that it is about', () => {
    expect(sayRefusal(all['too-many-tries'], say('en'))).toContain('wait 20 seconds');
    expect(sayRefusal({ rule: 'too-many-tries', waitS: 0.4 }, say('es'))).toContain('1 segundo ');
    expect(sayRefusal(all['poor-pin'], say('es'))).toContain('de 4 a 12 cifras');
    expect(sayRefusal(all['name-taken'], say('en'))).toContain('“By the door”');
  });
});

it('has every word of the section in both languages', () => {
  const [english, spanish] = [whoWords.en, whoWords.es];
  expect(Object.keys(spanish)).toEqual(Object.keys(english));
  expect(spanish.codeLasts(1)).not.toBe(english.codeLasts(1));
});
