// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import { followKeys } from '../../../client/hands/wall-keys.ts';
import { NowLine } from '../../../client/parts/now-line.ts';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { Intent } from '../../../shared/view/index.ts';
import { buttonsOf, drawn } from '../fingers.ts';
import { NOW, squareRibs, stationView } from '../fixtures.ts';

const tub = { tub: 'tips', name: { en: 'tips' }, weightKg: kilograms(4), mostKg: kilograms(27) };

function chosen(): HTMLElement | null {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at instanceof HTMLElement ? at : null;
}

const name = () => (chosen()?.textContent ?? '').replace(/\s+/g, ' ').trim();

/** As a browser does: Enter taps the button that it is pressed on. */
async function press(key: string) {
  const init = { key, bubbles: true, composed: true, cancelable: true };
  const event = new KeyboardEvent('keydown', init);
  // What bounces on a pedal is told from a press by the time between.
  pressedMs += 1_000;
  Object.defineProperty(event, 'timeStamp', { value: pressedMs });
  const at = chosen();
  (at ?? document.body).dispatchEvent(event);
  if (key === 'Enter' && !event.defaultPrevented) at?.click();
  await drawn();
}

async function go(to: string) {
  for (let steps = 0; steps < 40 && !name().startsWith(to); steps++) await press('ArrowRight');
  expect(name()).toContain(to);
}

let pressedMs = 0;
followKeys(document);
afterEach(() => document.body.replaceChildren());

async function line() {
  const task = { ...squareRibs, tubs: [{ ...tub, isWeighed: false }] };
  const element = Object.assign(new NowLine(), { task, people: stationView.people, now: NOW });
  const asked: Intent[] = [];
  element.addEventListener('ask', (event) => asked.push((event as CustomEvent<Intent>).detail));
  document.body.append(element);
  await drawn();
  return { element, asked };
}

it('weighs trim with three keys of a pedal and the digits', async () => {
  const { asked } = await line();
  await go('weigh');
  await press('Enter');
  for (const key of '4,1') await press(key);
  await go('tips');
  await press('Enter');
  expect(asked).toMatchObject([{ kind: 'weighTub', tub: 'tips', weightKg: 4.1 }]);
});

it('leaves the scale as it was at Escape', async () => {
  const { element, asked } = await line();
  await go('weigh');
  await press('Enter');
  expect(buttonsOf(element).some(([each]) => each.startsWith('tips'))).toBe(true);
  await press('Escape');
  expect(buttonsOf(element).some(([each]) => each.startsWith('tips'))).toBe(false);
  expect(asked).toEqual([]);
});
