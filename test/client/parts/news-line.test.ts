// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NewsLinePart } from '../../../client/parts/news-line.ts';
import type { CommandId } from '../../../shared/kernel/index.ts';
import { celsius, minutes, seconds } from '../../../shared/kernel/index.ts';
import type { NewsLine } from '../../../shared/view/index.ts';
import { drawn, saidOn, tap } from '../fingers.ts';
import { at, stationView } from '../fixtures.ts';

const dinner = { en: 'Dinner', es: 'Cena' };
const news: NewsLine = {
  command: 'down' as CommandId,
  at: at(-1),
  person: 'Theo',
  said: { kind: 'smokerWentDown', smoker: { en: 'Smoker B' }, tempC: celsius(60), backAt: null },
  tasks: [{ title: { en: 'Load ribs' }, batch: { en: 'Ribs 1' }, byS: minutes(40) }],
  more: 12,
  services: [
    { name: { en: 'Lunch' }, byS: minutes(5) },
    { name: dinner, byS: minutes(-65) },
  ],
  lost: [],
  longerS: seconds(0),
  canBeUndone: true,
};

async function line() {
  const { zone, clock, temperature, weight } = stationView;
  const say = { language: 'en', zone, clock, temperature, weight } as const;
  const element = Object.assign(new NewsLinePart(), { news, say });
  document.body.append(element);
  await drawn();
  return element;
}

const SHORT = 'Theo: Smoker B is down at 140 °F → Dinner loses 1 h 5 min, 14 more changes';

beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout'] }));
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('news on a wall', () => {
  it('say in one line what was decided and what it costs most', async () => {
    expect(saidOn(await line())).toContain(SHORT);
  });

  it('say the rest at a tap, and no longer than it takes to read', async () => {
    const element = await line();
    await tap(element, 'Theo: Smoker B is down');
    const whole = saidOn(element);
    expect(whole).toMatch(/Dinner loses 1 h 5 min; Lunch gains 5 min; Load ribs \(Ribs 1\) 40 min/);
    expect(whole).toContain('12 more tasks');
    vi.advanceTimersByTime(20_100);
    await drawn();
    expect(saidOn(element)).toContain(SHORT);
  });

  it('have a box to undo what was decided, and that is named beside it', async () => {
    const strip = (await line()).shadowRoot?.querySelector('choice-strip');
    expect(strip?.ariaLabel).toBe('Theo: Smoker B is down at 140 °F');
    expect(saidOn(strip as HTMLElement).trim()).toBe('undo');
  });

  it('of another decision begin in one line again', async () => {
    const element = await line();
    await tap(element, 'Theo: Smoker B is down');
    element.news = { ...news, command: 'other' as CommandId };
    await drawn();
    expect(saidOn(element)).toContain(SHORT);
  });
});
