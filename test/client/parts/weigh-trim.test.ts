// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { NowLine } from '../../../client/parts/now-line.ts';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { Intent, TaskView } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn, tap } from '../fingers.ts';
import { NOW, squareRibs, stationView } from '../fixtures.ts';

const { people, zone, clock, temperature } = stationView;
/** By definition (international pound of 1959). */
const POUND_KG = 0.45359237;

const tubs = [
  { tub: 'tips', name: { en: 'tips', es: 'puntas' }, weightKg: kilograms(4), isWeighed: false },
  { tub: 'bone', name: { en: 'bone', es: 'hueso' }, weightKg: kilograms(1), isWeighed: false },
].map((each) => ({ ...each, mostKg: kilograms(27) }));
const trimming: TaskView = { ...squareRibs, tubs };

async function line(task: TaskView, weight: 'lb' | 'kg' = 'kg', language: 'en' | 'es' = 'en') {
  const say = { language, zone, clock, temperature, weight };
  const element = Object.assign(new NowLine(), { task, people, now: NOW, say });
  const asked: Intent[] = [];
  element.addEventListener('ask', (event) => asked.push((event as CustomEvent<Intent>).detail));
  document.body.append(element);
  await drawn();
  return { element, asked };
}

async function type(element: Element, signs: string) {
  for (const sign of signs) await tap(element, sign);
}

const offers = (element: Element, name: string) =>
  buttonsOf(element).some(([each]) => each.startsWith(name));

afterEach(() => document.body.replaceChildren());

describe('trim at the wall', () => {
  it('goes over the scale with a tap, its digits, and the tub', async () => {
    const { element, asked } = await line(trimming);
    await tap(element, 'weigh');
    await type(element, '4.1');
    await tap(element, 'tips');
    const { batch } = trimming;
    expect(asked).toEqual([{ kind: 'weighTub', batch, tub: 'tips', weightKg: 4.1 }]);
  });

  it('is read in pounds where the kitchen weighs in pounds', async () => {
    const { element, asked } = await line(trimming, 'lb');
    await tap(element, 'weigh');
    expect(saidOn(element)).toContain('more than 0, at most 59.5 lb');
    await type(element, '9.5');
    await tap(element, 'bone');
    expect(asked).toMatchObject([{ tub: 'bone', weightKg: expect.closeTo(9.5 * POUND_KG, 9) }]);
  });

  it('can be weighed one tub after the other without another tap', async () => {
    const { element, asked } = await line(trimming);
    await tap(element, 'weigh');
    await type(element, '4');
    await tap(element, 'tips');
    await type(element, '1');
    await tap(element, 'bone');
    expect(asked).toMatchObject([
      { tub: 'tips', weightKg: 4 },
      { tub: 'bone', weightKg: 1 },
    ]);
  });

  it('is offered while its work runs and just after, not before', async () => {
    for (const state of ['running', 'done'] as const) {
      expect(offers((await line({ ...trimming, state })).element, 'weigh')).toBe(true);
    }
    for (const state of ['waiting', 'ready'] as const) {
      expect(offers((await line({ ...trimming, state })).element, 'weigh')).toBe(false);
    }
    expect(offers((await line(squareRibs)).element, 'weigh')).toBe(false);
  });

  it('is shown as it was weighed, and can be weighed again', async () => {
    const weighed = tubs.map((each) => ({ ...each, isWeighed: true }));
    const { element } = await line({ ...trimming, tubs: weighed });
    await tap(element, 'weigh');
    expect(offers(element, 'tips 4 kg')).toBe(true);
  });

  it('is weighed in Spanish too', async () => {
    const { element } = await line(trimming, 'kg', 'es');
    await tap(element, 'pesar');
    expect(saidOn(element)).toContain('más de 0, no más de 27 kg');
    expect(offers(element, 'puntas ≈ 4 kg')).toBe(true);
  });
});

describe('a weight that cannot be', () => {
  it.each([
    ['nothing', ''],
    ['nought', '0'],
    ['only a point', '.'],
    ['more than the batch weighed', '27.1'],
    ['thirty digits', '123456789012345678901234567890'],
  ])('is said with its range and not sent: %s', async (_, signs) => {
    const { element, asked } = await line(trimming);
    await tap(element, 'weigh');
    await type(element, signs);
    await tap(element, 'tips');
    expect(asked).toEqual([]);
    const wrong = alertIn(element);
    expect(wrong).toBe('(more than 0, at most 27 kg)');
  });

  it('stays to be mended', async () => {
    const { element, asked } = await line(trimming);
    await tap(element, 'weigh');
    await type(element, '41');
    await tap(element, 'tips');
    expect(saidOn(element)).toContain('41 kg');
    await tap(element, 'erase');
    expect(alertIn(element)).toBeNull();
    await tap(element, 'tips');
    expect(asked).toMatchObject([{ weightKg: 4 }]);
  });

  it('names what one tub can hold where that is less than another can', async () => {
    const [tips, bone] = tubs;
    if (!tips || !bone) throw new Error('two tubs');
    const less = [tips, { ...bone, mostKg: kilograms(2) }];
    const { element, asked } = await line({ ...trimming, tubs: less });
    await tap(element, 'weigh');
    await type(element, '3');
    await tap(element, 'bone');
    expect(alertIn(element)).toBe('(more than 0, at most 2 kg)');
    await tap(element, 'tips');
    expect(asked).toMatchObject([{ tub: 'tips', weightKg: 3 }]);
  });
});

describe('the keyboard at the scale', () => {
  it('takes a comma for the point, one of them, and no other signs', async () => {
    const { element, asked } = await line(trimming);
    await tap(element, 'weigh');
    const [, key] = buttonsOf(element).find(([name]) => name === '1') ?? [];
    for (const sign of ['4', ',', '2', '.', 'e', '-', '5']) {
      key?.dispatchEvent(
        new KeyboardEvent('keydown', { key: sign, bubbles: true, composed: true }),
      );
      await drawn();
    }
    await tap(element, 'tips');
    expect(asked).toMatchObject([{ weightKg: 4.25 }]);
  });
});

function alertIn(element: Element): string | null {
  const roots = [element, ...[...deep(element)]].flatMap(({ shadowRoot }) => shadowRoot ?? []);
  const found = roots.flatMap((root) => root.querySelector('[role=alert]') ?? []);
  return found[0]?.textContent?.trim() ?? null;
}

function* deep(element: Element): Generator<Element> {
  for (const each of element.shadowRoot?.querySelectorAll('*') ?? []) {
    yield each;
    yield* deep(each);
  }
}
