import { expect, it } from 'vitest';
import { las, passWords, sayReadings } from '../../../shared/words/index.ts';

it('says one o’clock in the singular, and every other hour in the plural', () => {
  expect(['1:05 pm', '1:00 am +1', '01:30'].map(las)).toEqual([
    'la 1:05 pm',
    'la 1:00 am +1',
    'la 01:30',
  ]);
  expect(['11:05 am', '10:00', '21:10'].map(las)).toEqual([
    'las 11:05 am',
    'las 10:00',
    'las 21:10',
  ]);
});

it('says of a single portion that it is ready, or lacking, in the singular', () => {
  expect([passWords.es.ready, passWords.es.readyOne]).toEqual(['listas', 'lista']);
  expect(passWords.es.runsOut('1:59', 1)).toBe('se acaba 1:59, falta 1');
  expect(passWords.es.runsOut('1:28', 7)).toBe('se acaba 1:28, faltan 7');
});

it('says of several readings what became of them in the plural', () => {
  expect(sayReadings(['duplicate', 'duplicate'], 'es')).toContain('2 ya estaban guardadas.');
  expect(sayReadings(['before-the-day'], 'es')).toContain('1 es de antes de este día.');
});
