// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { StationView } from '../../../shared/view/index.ts';
import type { Language } from '../../../shared/words/index.ts';
import { buttonsOf, drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { at, stationView, theo } from '../fixtures.ts';

async function wall(view: StationView = stationView, language: Language = 'en') {
  const { sync, taps } = tapsWrittenDown({ view });
  const state = sync.state as { view: StationView };
  const element = Object.assign(new StationWall(), { sync, language });
  const shows = async (next: StationView) => {
    state.view = next;
    element.requestUpdate();
    await drawn();
  };
  document.body.append(element);
  await drawn();
  await tap(element, 'Trim table');
  return { element, taps, shows };
}

const withTheo = (backAt: StationView['endsAt'] | null): StationView => ({
  ...stationView,
  people: stationView.people.map((each) =>
    each.id === theo ? { ...each, isOut: true, backAt } : each,
  ),
});

const names = (element: Element) => buttonsOf(element).map(([name]) => name);

afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('a hand that goes out, at a wall', () => {
  it('is asked when it is thought to be back before anything is kept', async () => {
    const { element, taps } = await wall();
    await tap(element, 'Theo goes out');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain('Theo: back when?');
    expect(names(element)).toEqual(
      expect.arrayContaining(['30 min · 11:12', '1 h · 11:42', '2 h · 12:42', 'nobody knows']),
    );
  });

  it.each([
    ['1 h', at(60)],
    ['rest of the day · 20:42', stationView.endsAt],
    ['nobody knows', null],
  ])('is back after %s, and the strip is gone with it', async (box, backAt) => {
    const { element, taps } = await wall();
    await tap(element, 'Theo goes out');
    await tap(element, box);
    expect(taps).toMatchObject([{ kind: 'handOut', hand: theo, backAt }]);
    expect(saidOn(element)).not.toContain('back when?');
    expect(names(element).some((name) => / goes out$|^leave it$/.test(name))).toBe(false);
    await tap(element, 'Trim table');
    expect(names(element)).toContain('Ines goes out');
  });

  it('is asked no more once another screen has said it', async () => {
    const { element, shows } = await wall();
    await tap(element, 'Theo goes out');
    await shows({ ...stationView, seq: 41 });
    expect(saidOn(element)).toContain('Theo: back when?');
    await shows(withTheo(at(120)));
    expect(saidOn(element)).not.toContain('back when?');
    expect(names(element)).not.toContain('30 min · 11:12');
  });

  it('is asked no more when nobody has answered for a while', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'setInterval'] });
    const { element, taps } = await wall();
    await tap(element, 'Theo goes out');
    vi.advanceTimersByTime(31_000);
    await drawn();
    expect(saidOn(element)).not.toContain('back when?');
    expect(taps).toEqual([]);
  });

  it('is left where it is with one tap', async () => {
    const { element, taps } = await wall();
    await tap(element, 'Theo goes out');
    await tap(element, 'leave it');
    expect(taps).toEqual([]);
  });

  it('shows till when, may be thought back at another time, and comes in at one tap', async () => {
    const { element, taps } = await wall(withTheo(at(30)));
    await tap(element, 'Theo back: 11:12');
    await tap(element, '2 h');
    await tap(element, 'Trim table');
    await tap(element, 'Theo is in again');
    expect(taps).toMatchObject([
      { kind: 'handOut', hand: theo, backAt: at(120) },
      { kind: 'handIn', hand: theo },
    ]);
  });

  it('has no end of a day to name once that is past', async () => {
    const { element } = await wall({ ...stationView, endsAt: at(-1) });
    await tap(element, 'Theo goes out');
    expect(names(element).some((name) => name.startsWith('rest of the day'))).toBe(false);
  });

  it('is asked in Spanish where the wall speaks it', async () => {
    const { element } = await wall(withTheo(null), 'es');
    expect(names(element)).toContain('Theo vuelve: no se sabe');
    await tap(element, 'Theo vuelve');
    expect(saidOn(element)).toContain('Theo: ¿cuándo vuelve?');
  });
});
