// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import type { CheckPad } from '../../../client/parts/check-pad.ts';
import '../../../client/parts/check-pad.ts';
import { CurePad } from '../../../client/parts/cure-pad.ts';
import { KeyPad } from '../../../client/parts/key-pad.ts';
import type { BatchId, CoolerId, CutId } from '../../../shared/kernel/index.ts';
import { celsius, kilograms } from '../../../shared/kernel/index.ts';
import type { Intent } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn, tap } from '../fingers.ts';
import { ines, NOW, squareRibs, stationView, theo } from '../fixtures.ts';
import { ribs, rosa } from '../open-check.ts';

const ribsBatch = 'ribs' as BatchId;
const MANY = '123456789012345678901234567890';

/** A pad on the glass, with what it tells, in the kitchen's unit. */
async function put<Pad extends KeyPad | CheckPad | CurePad>(
  pad: Pad,
  unit: '°F' | '°C',
  ...kinds: string[]
) {
  pad.say = { ...pad.say, temperature: unit, weight: unit === '°F' ? 'lb' : 'kg' };
  const told: unknown[] = [];
  for (const kind of kinds) {
    pad.addEventListener(kind, (event) => told.push((event as CustomEvent).detail));
  }
  document.body.append(pad);
  await drawn();
  return { pad, told };
}

const air = (unit: '°F' | '°C') =>
  put(Object.assign(new KeyPad(), { name: 'Drum, air' }), unit, 'read');

async function check(unit: '°F' | '°C', more: Partial<typeof ribs> = {}) {
  const pad = document.createElement('check-pad') as CheckPad;
  Object.assign(pad, { check: { ...ribs, ...more }, people: [rosa], now: NOW });
  const { told } = await put(pad, unit, 'said');
  return { pad, told: told as { readonly intent: Intent }[] };
}

async function cure() {
  const weighed = { mix: { en: 'Cure 1' }, weightKg: kilograms(0.105), weighed: null };
  const task = { ...squareRibs, cure: weighed };
  const pad = Object.assign(new CurePad(), { task, people: stationView.people });
  const { told } = await put(pad, '°C', 'ask');
  const names = stationView.people.filter(({ id }) => id === ines || id === theo);
  for (const { name } of names) await tap(pad, name);
  return { pad, told };
}

async function keys(pad: Element, signs: string) {
  const [, one] = buttonsOf(pad).find(([name]) => name === '1') ?? [];
  for (const key of signs) {
    one?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }));
    await drawn();
  }
}

afterEach(() => document.body.replaceChildren());

describe('a pad for the air of a smoker', () => {
  it.each([
    ['nothing', '', 'Type what it showed first.'],
    ['what no thermometer shows', '999', 'between -40 °F and 842 °F'],
  ])('says so and sends nothing: %s', async (_, signs, said) => {
    const { pad, told } = await air('°F');
    await keys(pad, signs);
    await tap(pad, 'keep');
    expect(told).toEqual([]);
    expect(saidOn(pad)).toContain(said);
  });

  it('takes no more digits than a thermometer has', async () => {
    const { pad, told } = await air('°F');
    await keys(pad, MANY);
    await tap(pad, 'keep');
    expect(told).toEqual([expect.closeTo(((123 - 32) * 5) / 9, 9)]);
  });

  it('takes a comma for the point, and a tenth for a tenth', async () => {
    const { pad, told } = await air('°C');
    await keys(pad, '107,25');
    await tap(pad, 'keep');
    expect(told).toEqual([107.2]);
  });
});

describe('a pad for a core', () => {
  it.each([
    ['nothing', '', 'Type what it showed first.'],
    ['what no probe in food shows', '400', 'between -22 °F and 221 °F'],
  ])('says so and sends nothing: %s', async (_, signs, said) => {
    const { pad, told } = await check('°F');
    await keys(pad, signs);
    await tap(pad, 'Rosa');
    expect(told).toEqual([]);
    expect(saidOn(pad)).toContain(said);
  });

  it('takes no more digits than a probe has', async () => {
    const { pad, told } = await check('°F');
    await keys(pad, MANY.replace('123', '150'));
    await tap(pad, 'Rosa');
    expect(told).toMatchObject([{ intent: { tempC: expect.closeTo(((150 - 32) * 5) / 9, 9) } }]);
  });

  it('never takes 5,4 °C for 54 °C, nor for 5 °C, which would be cold enough', async () => {
    const cold = { atLeastC: null, atMostC: ribs.atLeastC, asked: '5 °C' };
    const { pad, told } = await check('°C', cold);
    await keys(pad, '5,4');
    await tap(pad, 'Rosa');
    expect(told).toMatchObject([{ intent: { kind: 'check', tempC: 5.4 } }]);
  });
});

describe('a pad for what may come out of a freezer', () => {
  const cold = { atLeastC: null, atMostC: celsius(5), asked: '5 °C' };
  const kinds = (kind: 'receiving' | 'cold-hold') => ({
    ...cold,
    on:
      kind === 'receiving'
        ? { kind, cut: 'spare-ribs' as CutId }
        : { kind, cooler: 'walk-in' as CoolerId },
  });

  it.each([
    ['a delivery', '°C', kinds('receiving'), -18],
    ['a cold room', '°F', kinds('cold-hold'), (-5 - 32) / 1.8],
  ] as const)('keeps below zero what is tapped: %s', async (_, unit, more, tempC) => {
    const { pad, told } = await check(unit, more);
    await tap(pad, 'below zero');
    expect(saidOn(pad)).toContain(`-… ${unit}`);
    for (const digit of unit === '°C' ? '18' : '5') await tap(pad, digit);
    await tap(pad, 'Rosa');
    expect(told).toMatchObject([{ intent: { kind: 'check', tempC: expect.closeTo(tempC, 9) } }]);
  });

  it('takes the sign after the digits too, and off again', async () => {
    const { pad, told } = await check('°C', kinds('cold-hold'));
    for (const name of ['2', 'below zero', 'below zero', '1', 'below zero', 'Rosa']) {
      await tap(pad, name);
    }
    expect(told).toMatchObject([{ intent: { tempC: -21 } }]);
  });

  it('takes it from a keyboard, with all its digits and a tenth', async () => {
    const { pad, told } = await check('°C', kinds('cold-hold'));
    await keys(pad, '-18,55');
    await tap(pad, 'Rosa');
    expect(told).toMatchObject([{ intent: { tempC: -18.5 } }]);
  });

  it('asks for a number where there is only a sign, and says how low a probe goes', async () => {
    const { pad, told } = await check('°C', kinds('cold-hold'));
    for (const name of ['below zero', 'Rosa']) await tap(pad, name);
    expect(saidOn(pad)).toContain('Type what it showed first.');
    for (const name of ['9', '0', 'Rosa']) await tap(pad, name);
    expect(saidOn(pad)).toContain('-90 °C');
    expect(saidOn(pad)).toContain('between -30 °C and 105 °C');
    expect(told).toEqual([]);
  });

  it('asks whether 0 °F was 0 °C, for both are usual, and keeps what is said', async () => {
    const { pad, told } = await check('°F', kinds('receiving'));
    for (const name of ['0', 'Rosa']) await tap(pad, name);
    expect(told).toEqual([]);
    await tap(pad, 'It is 0 °F');
    expect(told).toMatchObject([{ intent: { tempC: expect.closeTo(-32 / 1.8, 9) } }]);
  });

  it('has the key for the air of a smoker that is out in the frost', async () => {
    const { pad, told } = await air('°C');
    for (const name of ['below zero', '7', 'keep']) await tap(pad, name);
    expect(told).toEqual([-7]);
  });

  it.each([
    ['hot-hold', ribs],
    ['end-temperature', { ...ribs, on: { kind: 'end-temperature', batch: ribsBatch } }],
    ['reheat', { ...ribs, on: { kind: 'reheat', batch: ribsBatch } }],
  ] as const)('has no key for it where nothing is so cold: %s', async (_, more) => {
    const { pad, told } = await check('°C', more);
    await keys(pad, '-70');
    expect(buttonsOf(pad).map(([name]) => name)).not.toContain('below zero');
    await tap(pad, 'Rosa');
    expect(told).toMatchObject([{ intent: { tempC: 70 } }]);
  });
});

describe('a pad for curing salt', () => {
  it.each([
    ['nothing', ''],
    ['nought', '0'],
    ['more than the meat weighs', MANY],
  ])('says what can be and sends nothing: %s', async (_, signs) => {
    const { pad, told } = await cure();
    await keys(pad, signs);
    await tap(pad, 'keep');
    expect(told).toEqual([]);
    expect(saidOn(pad)).toContain('more than 0, at most 27000 g');
  });

  it('takes a comma for the point', async () => {
    const { pad, told } = await cure();
    await keys(pad, '104,5');
    await tap(pad, 'keep');
    expect(told).toMatchObject([{ kind: 'weighCure', weightKg: expect.closeTo(0.1045, 9) }]);
  });
});
