import { expect, it } from 'vitest';
import { after, minutes } from '../../../shared/kernel/index.ts';
import type { CheckView } from '../../../shared/view/index.ts';
import { sayCheckTime, sayToDo } from '../../../shared/words/index.ts';
import { NOW } from '../../client/fixtures.ts';
import { ribs } from '../../client/open-check.ts';

const say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
} as const;
const inSpanish = { ...say, language: 'es' } as const;
const when = (check: Partial<CheckView>, now = NOW, as: typeof say | typeof inSpanish = say) =>
  sayCheckTime({ ...ribs, ...check }, now, as);

it('says to whoever knows neither the place nor the trade what to do, by when and how far', () => {
  expect(sayToDo(ribs, NOW, say)).toBe('probe what is held hot · Ribs');
  expect(when({})).toMatch(/^by \d\d:\d\d, at least 135 °F$/);
  expect(sayToDo(ribs, NOW, inSpanish)).toMatch(/^sondee lo que está caliente · /);
  expect(when({}, NOW, inSpanish)).toMatch(/^antes de las? \d\d:\d\d, mínimo 135 °F$/);
});

it('says which way a limit binds: so warm at most, so long at most, off by so much', () => {
  expect(when({ asked: '41 °F', atLeastC: null })).toContain('at most 41 °F');
  const clean = { kind: 'clean' } as CheckView['on'];
  expect(when({ on: clean, asked: '4 h', atLeastC: null })).toContain('at most 4 h');
  const ice = { kind: 'thermometer' } as CheckView['on'];
  expect(when({ on: ice, asked: '2 °F', atLeastC: null })).toContain('off by 2 °F at most');
  expect(when({ asked: null, atLeastC: null })).toMatch(/^by \d\d:\d\d$/);
});

it('says of what was not looked at when that was due, and of what was wrong what was found', () => {
  expect(when({}, after(ribs.lateAt, minutes(5)))).toMatch(/^was to be done by \d\d:\d\d/);
  const failed = { at: NOW, by: 'Rosa' };
  expect(when({ failed, breach: null })).toMatch(
    /^found .* by Rosa, and at least 135 °F is asked$/,
  );
});

it('says of food whose time is over only that it goes, how much, since when and where', () => {
  const on = { kind: 'discard-time', batch: 'ribs' } as CheckView['on'];
  const old = { portions: 4, where: { en: 'Warm cabinet', es: 'Gabinete' } };
  const held = { ...ribs, on, asked: '3 h', atLeastC: null, old };
  expect(sayToDo(held, NOW, say)).toBe('sell or throw out · Ribs');
  expect(sayToDo(held, held.lateAt, say)).toBe('throw out 4 portions · Ribs');
  expect(when(held, held.lateAt)).toMatch(/^too old since \d\d:\d\d · Warm cabinet$/);
  expect(sayToDo(held, held.lateAt, inSpanish)).toBe('tire 4 porciones · Ribs');
  const unknown = { ...ribs, on };
  expect(sayToDo(unknown, held.lateAt, say)).toBe('throw out · Ribs');
  expect(when(unknown, held.lateAt)).toMatch(/^too old since \d\d:\d\d$/);
});
