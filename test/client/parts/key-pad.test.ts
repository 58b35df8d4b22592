// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import { KeyPad } from '../../../client/parts/key-pad.ts';
import { drawn, saidOn, tap } from '../fingers.ts';

async function pad() {
  const element = Object.assign(new KeyPad(), {
    name: 'Drum, air',
    ways: [{ label: 'it is down', way: 'down' }],
  });
  element.say = { ...element.say, temperature: '°F' };
  const told: string[] = [];
  for (const kind of ['read', 'read-as']) element.addEventListener(kind, () => told.push(kind));
  document.body.append(element);
  await drawn();
  return { element, told };
}

afterEach(() => document.body.replaceChildren());

it('asks for the number first where a smoker is said to be down without one', async () => {
  const { element, told } = await pad();
  await tap(element, 'it is down');
  expect(saidOn(element)).toContain('Type what it showed first.');
  for (const name of ['1', '5', '0', 'it is down']) await tap(element, name);
  expect(told).toEqual(['read-as']);
});

it('says what a thermometer can show where a number is none of that, and keeps it', async () => {
  const { element, told } = await pad();
  for (const name of ['9', '9', '9', 'keep']) await tap(element, name);
  expect(told).toEqual([]);
  expect(saidOn(element)).toContain('-40 °F');
  expect(saidOn(element)).toContain('999 °F');
});
