// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { NotePad } from '../../../client/parts/note-pad.ts';
import { NOTE_MAX } from '../../../shared/view/index.ts';
import { drawn, saidOn, tap } from '../fingers.ts';

async function pad(language: 'en' | 'es' = 'en') {
  const element = new NotePad();
  element.say = { ...element.say, language };
  const told: unknown[] = [];
  for (const kind of ['note', 'close']) {
    element.addEventListener(kind, (event) => told.push([kind, (event as CustomEvent).detail]));
  }
  document.body.append(element);
  await drawn();
  const input = element.shadowRoot?.querySelector('input');
  if (!input) throw new Error('a line to write on');
  const write = async (words: string) => {
    input.value = words;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await drawn();
  };
  return { element, input, told, write };
}

afterEach(() => document.body.replaceChildren());

describe('a pad for a note', () => {
  it.each([
    ['nothing', '', 'Write something first.', 'Escriba algo primero.'],
    ['only spaces', '   ', 'Write something first.', 'Escriba algo primero.'],
    [
      'twelve letters too many',
      'a'.repeat(NOTE_MAX + 12),
      'At most 280 letters: take 12 off.',
      'No más de 280 letras: quite 12.',
    ],
    [
      'a sign that is no letter',
      'ring\u0007',
      'It has a sign that no screen shows: write it anew.',
      'Tiene un signo que no se ve: escríbala de nuevo.',
    ],
  ])('says so beside it, keeps it and sends nothing: %s', async (_, words, english, spanish) => {
    for (const [language, said] of [['en', english] as const, ['es', spanish] as const]) {
      const { element, input, told, write } = await pad(language);
      await write(words);
      await tap(element, language === 'en' ? 'keep' : 'guardar');
      expect(saidOn(element)).toContain(said);
      expect(input.value).toBe(words);
      expect(told).toEqual([]);
      element.remove();
    }
  });

  it('says it no longer once it is mended, and sends what stands then', async () => {
    const { element, told, write } = await pad();
    await write('a'.repeat(NOTE_MAX + 1));
    await tap(element, 'keep');
    await write(' thin at the flat ');
    expect(saidOn(element)).not.toContain('At most');
    await tap(element, 'keep');
    expect(told).toEqual([['note', 'thin at the flat']]);
  });

  it('keeps nothing of what was wrong where it is closed', async () => {
    const { element, told, write } = await pad();
    await write('\u0007');
    await tap(element, 'keep');
    await tap(element, 'close');
    expect(told).toEqual([['close', null]]);
  });

  it('makes one space of a tab and of several', async () => {
    const { element, told, write } = await pad();
    await write('oak is  short,\tuse pecan');
    await tap(element, 'keep');
    expect(told).toEqual([['note', 'oak is short, use pecan']]);
  });
});
