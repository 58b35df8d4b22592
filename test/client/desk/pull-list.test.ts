// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PullList } from '../../../client/desk/pull-list.ts';
import type { CutId } from '../../../shared/kernel/index.ts';
import { fromPounds, kilograms, minutes } from '../../../shared/kernel/index.ts';
import type { Came, DeskView, PullRow } from '../../../shared/view/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { buttonsOf, drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { at, NOW, stationView } from '../fixtures.ts';

const { zone, clock, temperature, weight } = stationView;
const english: Say = { language: 'en', zone, clock, temperature, weight };
const ribs: PullRow = {
  cut: 'spare-ribs' as CutId,
  name: { en: 'Spare ribs', es: 'Costillas' },
  pieces: 12,
  weightKg: fromPounds(48),
  byAt: at(30),
  outPieces: 0,
  outAt: null,
  came: null,
};

async function list(row: PullRow = ribs, say = english) {
  const { sync, taps } = tapsWrittenDown();
  const view = { pull: [row], mixes: [] } as unknown as DeskView;
  const element = Object.assign(new PullList(), { sync, view, say, now: NOW });
  document.body.append(element);
  await drawn();
  return { element, taps };
}

const came = (amount: Pick<Came, 'pieces' | 'weightKg'>, effect: Came['effect']): PullRow => ({
  ...ribs,
  came: { ...amount, at: at(-1), effect },
});

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('what to mix, beside the pull list', () => {
  it('is weighed in ounces, so that no spice is nothing', async () => {
    const { element } = await list();
    const parts = [{ ingredient: { en: 'Celery seed' }, weightKg: kilograms(0.02) }];
    const mix = { name: { en: 'Poultry rub' }, weightKg: kilograms(0.5), parts, allergens: [] };
    element.view = { pull: [], mixes: [mix] } as unknown as DeskView;
    await drawn();
    expect(saidOn(element)).toMatch(/Poultry rub\s*1 lb 1\.6 oz/);
    expect(saidOn(element)).toContain('Celery seed 0.7 oz');
  });
});

describe('an allergen beside a mix', () => {
  it('is named in the language of the desk', async () => {
    const { element } = await list(ribs, { ...english, language: 'es' });
    const name = { en: 'Slaw dressing', es: 'Aderezo' };
    const mix = { name, weightKg: kilograms(1), parts: [], allergens: ['celery', 'mustard'] };
    element.view = { pull: [], mixes: [mix] } as unknown as DeskView;
    await drawn();
    expect(saidOn(element)).toContain('alérgenos: apio, mostaza');
  });
});

describe('a line of the pull list', () => {
  const minded = (element: Element) => element.shadowRoot?.querySelectorAll('.late').length;

  it('says till when it is to be out, with the day where that is another one', async () => {
    const { element } = await list();
    expect(saidOn(element)).toMatch(/48 lb 11:12/);
    expect(minded(element)).toBe(0);
    const { element: other } = await list({ ...ribs, byAt: at(24 * 60 + 30) });
    expect(saidOn(other)).toMatch(/48 lb Thu 11:12/);
  });

  it('that should be out is minded, and says how much still lies in the cooler', async () => {
    const { element } = await list({ ...ribs, byAt: at(-5), outPieces: 4, outAt: at(-60) });
    expect(saidOn(element)).toContain('4 of 12 out, 8 still in the cooler');
    expect(minded(element)).toBe(1);
    const spanish = { ...english, language: 'es' } as const;
    const { element: other } = await list({ ...ribs, byAt: at(-5) }, spanish);
    expect(saidOn(other)).toContain('12 todavía en la cámara');
  });

  it('that is out stands under all others, with since when, and asks for nothing', async () => {
    const { element } = await list({ ...ribs, outPieces: 12, outAt: at(-24 * 60) });
    expect(saidOn(element)).toMatch(/Out of the cooler since .*Spare ribs 12 48 lb Tue 10:42/);
    expect(minded(element)).toBe(0);
  });

  it('has a box that says what it is for, and then what came', async () => {
    const { element } = await list();
    expect(saidOn(element)).toContain('say what came');
    const { element: other } = await list(came({ pieces: 9, weightKg: fromPounds(36) }, null));
    expect(saidOn(other)).not.toContain('say what came');
  });
});

describe('what came, at the pull list', () => {
  it('is all that was listed where nothing is typed', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, 'this came');
    expect(taps).toMatchObject([{ kind: 'delivery', cut: ribs.cut, pieces: 12 }]);
    expect(taps[0]).toHaveProperty('weightKg', ribs.weightKg);
  });

  it('weighs what its pieces weigh on the list where only they are counted', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, '9');
    expect(saidOn(element)).toContain('36 lb');
    await tap(element, 'this came');
    expect(taps).toMatchObject([{ pieces: 9, weightKg: ribs.weightKg * 0.75 }]);
  });

  it('is weighed in the kitchen’s unit, to a tenth', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, 'weight');
    for (const key of ['5', '4', '.', '5', '5']) await tap(element, key);
    await tap(element, 'erase');
    await tap(element, 'this came');
    expect(taps).toMatchObject([{ pieces: 12, weightKg: fromPounds(54.5) }]);
  });

  it('is nothing at all where nought pieces came', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, '0');
    await tap(element, 'this came');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain(
      'Nothing came of Spare ribs, and what is planned of it cannot be made.',
    );
    await tap(element, 'it is so');
    expect(taps).toMatchObject([{ pieces: 0, weightKg: 0, isSo: true }]);
  });

  it.each([
    [['weight', '0'], 'it cannot weigh 0: type what it weighs, or 0 pieces'],
    [['weight', '.'], 'it cannot weigh 0: type what it weighs, or 0 pieces'],
    [['0', 'weight', '5'], '0 pieces weigh nothing: type how many came'],
  ])('is not sent where pieces and weight do not go together (%s)', async (keys, why) => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    for (const key of keys) await tap(element, key);
    await tap(element, 'this came');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain(why);
  });

  it('of a weight that no piece has is asked once more, and anew of another', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, 'weight');
    for (const key of ['9', '0', '0']) await tap(element, key);
    await tap(element, 'this came');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain('900 lb for 12 pieces is 75 lb apiece, where 4 lb is usual.');
    await tap(element, '1');
    await tap(element, 'this came');
    expect(taps).toEqual([]);
    await tap(element, 'it is so');
    expect(taps).toMatchObject([{ pieces: 12, weightKg: fromPounds(9001), isSo: true }]);
  });

  it('is not taken where no cooler holds so many, and says so', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    for (const key of ['9', '0', '0', '0', '0']) await tap(element, key);
    await tap(element, 'this came');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain('no more than 10000');
  });

  it('is undone where the finger was, for some seconds', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, 'this came');
    await tap(element, 'undo: Spare ribs');
    expect(taps.at(-1)).toMatchObject({ kind: 'undo', command: 'tap-1' });
    await tap(element, 'say what came of Spare ribs');
    await tap(element, 'this came');
    vi.advanceTimersByTime(8_100);
    await drawn();
    expect(buttonsOf(element).map(([name]) => name)).not.toContain('undo: Spare ribs');
  });

  it('is left as it was with one tap', async () => {
    const { element, taps } = await list();
    await tap(element, 'say what came of Spare ribs');
    await tap(element, 'leave it');
    expect(taps).toEqual([]);
    expect(buttonsOf(element)).toHaveLength(1);
  });

  it('says in one line what a short one costs, and a heavy one', async () => {
    const lost = [{ batch: { en: 'Ribs 2', es: 'Costillas 2' }, portions: 16 }];
    const short = came({ pieces: 9, weightKg: fromPounds(36) }, { lost, longerS: minutes(0) });
    const { element } = await list(short);
    expect(saidOn(element)).toContain('3 pieces short; 16 portions fewer of Ribs 2');
    expect(saidOn(element)).toContain('9 pieces · 36 lb');
    const heavy = came({ pieces: 12, weightKg: fromPounds(60) }, { lost: [], longerS: minutes(9) });
    const { element: other } = await list(heavy, { ...english, language: 'es' });
    expect(saidOn(other)).toContain('pesa más; limpiar lleva 9 min más');
  });

  it('says that it is as listed where a scale is off by a little', async () => {
    const { element } = await list(
      came(
        { pieces: 12, weightKg: kilograms(ribs.weightKg * 1.01) },
        { lost: [], longerS: minutes(0) },
      ),
    );
    expect(saidOn(element)).toContain('as listed');
  });
});
