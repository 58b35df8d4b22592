import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { oddDelivery, oddLot } from '../../../shared/day/index.ts';
import {
  after,
  celsius,
  fahrenheit,
  kilograms,
  must,
  seconds,
  toCelsius,
} from '../../../shared/kernel/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { sayOdd, sayRefusal } from '../../../shared/words/index.ts';
import { plan, Telling } from './demo.ts';

const say: Say = {
  ...{ language: 'en', zone: 'UTC', clock: '24 h', temperature: '°F', weight: 'lb' },
};
const known = { eachKg: 2, listed: 8, temperature: '°F', today: '2026-11-28' } as const;
const lot = { pieces: 8, weightKg: kilograms(16), tempC: celsius(3), useBy: '2026-12-05' };
const readF = (shown: number) => ({ ...lot, tempC: toCelsius(fahrenheit(shown)) });
const said = (came: Parameters<typeof oddLot>[0], language: Say['language'] = 'en') =>
  sayOdd(oddLot(came, known), { ...say, language });

describe('a lot whose temperature was likely read on the other scale', () => {
  it('is asked about: meat at 15 °C would go in as frozen', () => {
    expect(said(readF(15))).toBe('15 °F is frozen, and the thermometer may have shown 15 °C.');
    expect(said(readF(7), 'es')).toBe('7 °F es congelado, y el termómetro quizá marcaba 7 °C.');
  });

  // 41 °F, 5 °C, or less: 3-202.11(A), read in Washington's adoption of 2013.
  it('is asked about wherever it would be too warm in degrees Celsius', () => {
    for (let shown = 6; shown <= 28; shown++) expect(said(readF(shown))).not.toBe('');
  });

  it('is not where meat would be cold enough on either scale', () => {
    for (let shown = -10; shown <= 5; shown++) expect(said(readF(shown))).toBe('');
  });

  it.each([29, 34, 41, 50])('is not where %i °F is what it says', (shown) => {
    expect(said(readF(shown))).toBe('');
  });

  it('is not in a kitchen that reads degrees Celsius', () => {
    const frozen = { ...lot, tempC: celsius(-18) };
    expect(oddLot(frozen, { ...known, temperature: '°C' })).toEqual([]);
  });
});

describe('a lot that is out of the usual', () => {
  it.each([
    ['three times as heavy', { weightKg: kilograms(48) }, null],
    ['heavier than that', { weightKg: kilograms(50) }, /apiece, where 4\.4 lb is usual\.$/],
    ['a third as heavy', { weightKg: kilograms(5.4) }, null],
    ['lighter than that', { weightKg: kilograms(5) }, /^11 lb for 8 pieces is /],
    ['as many as a week and more take', { pieces: 80, weightKg: kilograms(160) }, null],
    [
      'more than that',
      { pieces: 88, weightKg: kilograms(176) },
      /^88 pieces came, where the pull list asks for 8\.$/,
    ],
    ['good for a year', { useBy: '2027-11-28' }, null],
    [
      'good for ever',
      { useBy: '2062-12-05' },
      /^Its use-by, Tue, Dec 5 2062, is more than a year off\.$/,
    ],
    ['not measured', { tempC: null }, /^Nobody measured its temperature\.$/],
    ['without a use-by', { useBy: null }, /^No use-by day is on it\.$/],
  ] as const)('%s', (_what, change, sentence) => {
    expect(said({ ...lot, ...change })).toMatch(sentence ?? /^$/);
  });

  it('is told in one sentence, in Spanish too', () => {
    const odd = { pieces: 88, weightKg: kilograms(176), tempC: null, useBy: '2062-12-05' };
    expect(said(odd, 'es')).toBe(
      'Llegaron 88 piezas, y la lista pide 8; nadie midió su temperatura; ' +
        'la caducidad, mar, 5 dic 2062, es dentro de más de un año.',
    );
  });

  it('may be as many as it likes where the pull list asks for none', () => {
    const many = { ...lot, pieces: 400, weightKg: kilograms(800) };
    expect(oddLot(many, { ...known, listed: null })).toEqual([]);
  });
});

describe('what is odd, told to a hub that nobody has asked before', () => {
  const line = must(plan.built.pull[0], 'a line of the pull list');
  const early = after(plan.built.origin, seconds(60));
  const whole = { cut: line.cut, pieces: line.pieces, weightKg: line.weightKg };
  const receive = (change: object = {}): Intent => ({
    ...{ kind: 'receive', ...whole, supplier: 'Elm Meats', tempC: celsius(3) },
    ...{ useBy: '2026-03-10', code: null, ...change },
  });
  const delivery = (change: object = {}): Intent => ({ kind: 'delivery', ...whole, ...change });

  const odd = [
    ['a lot far too heavy', receive({ weightKg: kilograms(line.weightKg * 10) })],
    ['a lot of far too many', receive(times(11))],
    ['a lot that nobody measured', receive({ tempC: null })],
    ['a lot that is frozen by its number', receive({ tempC: toCelsius(fahrenheit(15)) })],
    ['a lot that is good for ever', receive({ useBy: '2062-03-10' })],
    ['a lot without a use-by', receive({ useBy: null })],
    ['a line far too heavy', delivery({ weightKg: kilograms(line.weightKg * 10) })],
    ['a line of far too many', delivery(times(11))],
    ['a line of which nothing came', delivery({ pieces: 0, weightKg: kilograms(0) })],
  ] as const;

  function times(n: number) {
    return { pieces: line.pieces * n, weightKg: kilograms(line.weightKg * n) };
  }

  it.each(odd)('is refused, and leaves no trace: %s', (_what, intent) => {
    const telling = new Telling();
    expect(telling.ask(intent, early)).toMatchObject({
      ok: false,
      refusal: { rule: 'odd-delivery', cut: line.name },
    });
    expect(telling.events).toHaveLength(1);
  });

  it.each(odd)('is kept once somebody says that it is so: %s', (_what, intent) => {
    const telling = new Telling();
    const asked = { ...intent, isSo: true } as Intent;
    expect(telling.ask(asked, early).ok).toBe(true);
    // The log is as it always was: what was answered is not of the lot.
    for (const event of telling.events.slice(1)) expect(event).not.toHaveProperty('isSo');
  });

  it('is kept at once where nothing is odd', () => {
    expect(new Telling().ask(receive(), early).ok).toBe(true);
    expect(new Telling().ask(delivery(), early).ok).toBe(true);
  });

  it('is kept at once where it came too warm: that bars, and may not wait for an answer', () => {
    const warm = receive({ tempC: celsius(15), useBy: null });
    expect(new Telling().ask(warm, early).ok).toBe(true);
  });

  it('says what is odd, of which cut, and what to do, in both languages', () => {
    const refused = new Telling().ask(receive({ useBy: null }), early);
    if (refused.ok) throw new Error('it was kept');
    const name = line.name;
    expect(sayRefusal(refused.refusal, say)).toBe(
      `${name.en}: No use-by day is on it. ` +
        'Say it again at the desk: tap “it is so”, or put it right.',
    );
    expect(sayRefusal(refused.refusal, { ...say, language: 'es' })).toBe(
      `${name.es}: No trae fecha de caducidad. ` +
        'Dígalo otra vez en el escritorio: toque «así es» o corríjalo.',
    );
  });
});

describe('what came against a line of the pull list', () => {
  const line = { name: { en: 'Ribs', es: 'Costillas' }, pieces: 8, weightKg: kilograms(16) };

  it('is odd where it is nothing, and what that means is said', () => {
    const nothing = oddDelivery({ pieces: 0, weightKg: kilograms(0) }, line);
    expect(sayOdd(nothing, say)).toBe(
      'Nothing came of Ribs, and what is planned of it cannot be made.',
    );
  });

  it('is not where it is as listed', () => {
    expect(oddDelivery({ pieces: 8, weightKg: kilograms(17) }, line)).toEqual([]);
  });
});
