// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import type { CheckPad } from '../../../client/parts/check-pad.ts';
import '../../../client/parts/check-pad.ts';
import { CurePad } from '../../../client/parts/cure-pad.ts';
import { KeyPad } from '../../../client/parts/key-pad.ts';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { Intent } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn, tap } from '../fingers.ts';
import { ines, NOW, squareRibs, stationView, theo } from '../fixtures.ts';
import { ribs, rosa } from '../open-check.ts';

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
