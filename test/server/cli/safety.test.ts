import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { typed } from './kitchen-at-work.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-safety-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function log(name: string, header: string, temps: readonly number[], everyMin = 1) {
  const lines = temps.map((temp, index) => `${index * everyMin},${temp}`);
  writeFileSync(join(folder, name), `${header}\n${lines.join('\n')}\n`);
}

/** So many minutes in a straight line, a reading each. */
const line = (from: number, to: number, minutes: number) =>
  Array.from({ length: minutes + 1 }, (_, n) => from + ((to - from) * n) / minutes);

const json = async (...words: string[]) => {
  const { exit, said } = await typed(folder, 'safety', ...words, '--json');
  return { exit, ...JSON.parse(said) };
};

describe('a log of a cook', () => {
  it('is reckoned: a rise from 130 to 145 °F in an hour is 31 tenfold kills', async () => {
    // ∫ 10^((T − 150)/10) dt over that rise is 5.3197 min; with D = 0.1715 min, 31.02 (by hand,
    // z and D of the 6.5-log column of FSIS-GD-2021-14, Table 2, p. 35).
    log('roast.csv', 'time,temperature_F', line(130, 145, 60));
    const found = await json('roast.csv', '--kind', 'roast');
    expect(found.exit).toBe(0);
    expect(found.lethality_log).toBeCloseTo(31.02, 2);
    expect(found.refusals).toEqual([]);
  });

  it('names the row of the code that poultry at 150 °F breaks, and where it stands', async () => {
    log('bird.csv', 'time,temperature_F', line(40, 150, 110));
    // Poultry to 165 °F: FDA Food Code 3-401.11(A)(3).
    const found = await json('bird.csv', '--kind', 'chicken');
    expect(found.end_met).toBe(false);
    const rows = found.broken.map((row: { section: string }) => row.section);
    expect(rows).toContain('3-401.11(A)(3)');
    const { said } = await typed(folder, 'safety', 'bird.csv', '--kind', 'chicken');
    expect(said).toContain('found 150 °F, asked 165 °F (3-401.11(A)(3), FDA Food Code');
  });

  it('tells a cooling that keeps both its stages from one that misses the second', async () => {
    // 135 to 70 °F within 2 h, to 41 °F within 6 h: FDA Food Code 3-501.14(A).
    const quick = [...line(165, 135, 10), ...line(134, 70, 90), ...line(69, 40, 200)];
    const slow = [...line(165, 135, 10), ...line(134, 70, 110), ...line(69, 40, 300)];
    log('quick.csv', 'time,temperature_F', quick);
    log('slow.csv', 'time,temperature_F', slow);
    const kept = await json('quick.csv', '--kind', 'injected');
    const missed = await json('slow.csv', '--kind', 'injected');
    expect([kept.cooling.met, missed.cooling.met]).toEqual([true, false]);
    expect(missed.cooling.stage1_h).toBeLessThan(2);
    expect(missed.cooling.total_h).toBeGreaterThan(6);
  });

  it('counts the thermometer’s error against the limit', async () => {
    log('bird.csv', 'time,temperature_F', line(40, 165, 125));
    const sure = await json('bird.csv', '--kind', 'chicken', '--error-f', '0');
    const unsure = await json('bird.csv', '--kind', 'chicken', '--error-f', '1');
    expect([sure.end_met, unsure.end_met]).toEqual([true, false]);
  });

  it('is told in either language, with no phrase left out', async () => {
    log('roast.csv', 'time,temperature_F', line(100, 160, 120));
    const spanish = await typed(
      folder,
      'safety',
      'roast.csv',
      '--kind',
      'roast',
      '--language',
      'es',
    );
    const english = await typed(folder, 'safety', 'roast.csv', '--kind', 'roast');
    expect(english.said).toContain('End of the cook, by the profile');
    expect(spanish.said).toContain('Fin de la cocción, por el perfil');
    expect(spanish.said.split('\n')).toHaveLength(english.said.split('\n').length);
    expect(english.said).not.toMatch(/undefined|NaN/);
  });
});

describe('what cannot be reckoned', () => {
  it('is a file that is not there, and lines that cannot be right', async () => {
    expect(await typed(folder, 'safety', 'no.csv', '--kind', 'roast')).toMatchObject({
      exit: 1,
      complaints: ['no.csv: no such file.'],
    });
    expect((await typed(folder, 'safety', '.', '--kind', 'roast')).complaints).toEqual([
      '.: it is a folder; a file is wanted.',
    ]);
    log('odd.csv', 'time,temperature_F', [160, 161, 74, 163]);
    const { exit, complaints } = await typed(folder, 'safety', 'odd.csv', '--kind', 'roast');
    expect(exit).toBe(1);
    expect(complaints).toEqual([expect.stringContaining('4')]);
  });

  it.each([
    [[], '--kind: found nothing; allowed: '],
    [['--kind', 'chiken'], 'Did you mean chicken?'],
    [['--kind', 'roast', '--error-f', 'much'], '--error-f: found much; allowed: a number'],
    [['--kind', 'roast', '--fat', '300'], '--fat: found 300; allowed: a number from 0 to 100'],
    [['--kind', 'roast', '--error-f', '-4'], '--error-f: found -4; allowed: a number from 0 to 20'],
    [['--kind', 'roast', '--profile', 'moon'], 'allowed: food-code, celsius, empty'],
  ])('asks for what is missing: %j', async (words, sentence) => {
    log('roast.csv', 'time,temperature_F', [130, 140]);
    const { exit, complaints } = await typed(folder, 'safety', 'roast.csv', ...words);
    expect(exit).toBe(2);
    expect(complaints[0]).toContain(sentence);
  });
});
