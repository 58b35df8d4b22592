// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StandardSheet } from '../../../client/standard/standard-sheet.ts';
import type { CutId } from '../../../shared/kernel/index.ts';
import { standardsOf } from '../../../shared/view/index.ts';
import { filesWith } from '../../shared/plan/three-elms.ts';
import { buttonsOf, drawn, saidOn, tap } from '../fingers.ts';

const { catalogue, kitchen } = filesWith();
const shown = standardsOf(catalogue, kitchen);
const say = { language: 'en', zone: shown.zone, ...shown.units } as const;

async function sheetOf(cut: string, language: 'en' | 'es' = 'en') {
  const sheet = Object.assign(new StandardSheet(), {
    cut: cut as CutId,
    say: { ...say, language },
  });
  document.body.append(sheet);
  await vi.waitFor(() => expect(saidOn(sheet)).toMatch(/\S{3}.*\S{3}/s));
  await drawn();
  return sheet;
}

const answers = (body: unknown) => {
  vi.stubGlobal('fetch', async () => ({ ok: true, json: async () => body }));
};

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'Date'] });
});

afterEach(() => {
  document.body.replaceChildren();
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe('the sheet of a standard', () => {
  it('says that the hub is away where it was never read', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new Error('no network')));
    const sheet = await sheetOf('spare-ribs');
    expect(saidOn(sheet)).toContain('computer cannot be reached');
  });

  it('says what comes off, why, and how much is left, in the kitchen’s units', async () => {
    answers(shown);
    const sheet = await sheetOf('spare-ribs');
    const said = saidOn(sheet);
    for (const words of ['Breastbone', 'Membrane', 'no bone showing', '65 to 75 %', '3.5 lb']) {
      expect(said).toContain(words);
    }
    // Read once, it is there also when the network is gone.
    vi.stubGlobal('fetch', () => Promise.reject(new Error('no network')));
    expect(saidOn(await sheetOf('spare-ribs', 'es'))).toContain('Esternón');
  });

  it('says what can hurt under a word of its own, as heavily as what is right', async () => {
    answers(shown);
    expect(saidOn(await sheetOf('spare-ribs'))).toMatch(/Careful\s.*cut-resistant glove/s);
    expect(saidOn(await sheetOf('spare-ribs', 'es'))).toContain('Cuidado');
  });

  it('goes when it is closed, on Escape, and by itself when it is left alone', async () => {
    answers(shown);
    await tap(await sheetOf('shoulder'), 'Close');
    expect(document.querySelector('standard-sheet')).toBeNull();
    await sheetOf('shoulder');
    dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
    expect(document.querySelector('standard-sheet')).toBeNull();
    const left = await sheetOf('shoulder');
    vi.advanceTimersByTime(100_000);
    left.dispatchEvent(new Event('pointerdown'));
    vi.advanceTimersByTime(100_000);
    expect(left.isConnected).toBe(true);
    vi.advanceTimersByTime(100_000);
    expect(left.isConnected).toBe(false);
  });

  it('times a learner move by move, beside what is usual', async () => {
    answers(shown);
    const sheet = await sheetOf('spare-ribs');
    // Nobody takes half a minute for half an hour.
    expect(saidOn(sheet)).toMatch(/usual time for one.*30 s.*2 min/s);
    await tap(sheet, 'Time yourself');
    for (const seconds of [40, 150, 61, 29]) {
      vi.advanceTimersByTime(seconds * 1_000);
      await tap(sheet, 'done');
    }
    const said = saidOn(sheet);
    for (const took of [
      'took 40 s',
      'took 2 min 30 s',
      'took 1 min 1 s',
      'took 29 s',
      'took 4 min 40 s',
    ]) {
      expect(said).toContain(took);
    }
    expect(buttonsOf(sheet).map(([name]) => name)).not.toContain('done');
    await tap(sheet, 'Again');
    expect(saidOn(sheet)).not.toContain('took 4 min');
  });
});
