import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { kitchenFolder, logOfTheMorning, today, typed } from './kitchen-at-work.ts';

let folder: ReturnType<typeof kitchenFolder>;
beforeAll(() => {
  folder = kitchenFolder();
});
afterAll(() => folder.remove());

const headings = (page: string) => [...page.matchAll(/<h1>([^<]*)<\/h1>/g)].map(([, h]) => h);

describe('the sheets of a plan', () => {
  it('are one page with its own letters, on stdout', async () => {
    const { exit, said } = await typed(folder.path, 'print', `plans/${today}.json`);
    expect(exit).toBe(0);
    expect(headings(said)).toEqual([
      'Trim',
      'Mix bench',
      'Stove',
      'Pit',
      'Pass',
      'Pull list and mixes',
    ]);
    expect(said).toContain('url(data:font/woff2;base64,');
    expect(said).not.toContain('as it stood');
  });

  it('are written to a file, and may be those of one station in one language', async () => {
    const words = ['--out', 'pit.html', '--station', 'pit', '--language', 'es'];
    const { exit, said } = await typed(folder.path, 'print', '.', ...words);
    expect({ exit, said }).toEqual({
      exit: 0,
      said: 'pit.html: 1 sheet, Miércoles, 4 de marzo de 2026, plan 1. Print it in a browser.\n',
    });
    expect(headings(readFileSync(join(folder.path, 'pit.html'), 'utf8'))).toEqual(['Fuego']);
  });

  it('are not those of a station that the kitchen does not have', async () => {
    const { exit, complaints, said } = await typed(folder.path, 'print', '.', '--station', 'pitt');
    expect({ exit, said }).toEqual({ exit: 2, said: '' });
    expect(complaints).toEqual([
      [
        '--station: “pitt” is not known here; allowed:',
        'trim, mix, stove, pit, pass. Did you mean pit?',
      ].join(' '),
    ]);
  });

  it('cannot be written where there is no folder', async () => {
    const { exit, complaints } = await typed(folder.path, 'print', '.', '--out', 'no/where.html');
    expect(exit).toBe(1);
    expect(complaints[0]).toMatch(/^no\/where\.html cannot be written: /);
  });
});

describe('the sheets of a day that runs', () => {
  it('are as it stands now, with what is done left out, even when the files are gone', async () => {
    const events = await logOfTheMorning(folder.path);
    const done = events.filter(({ kind }) => kind === 'taskFinished').length;
    folder.write('kitchen.json', 'spilt over');
    const { exit, said } = await typed(folder.path, 'print', '.');
    expect(exit).toBe(0);
    expect(said).toContain('plan 1, as it stood at 12:00 pm');
    const counts = [...said.matchAll(/(\d+) done before and left out/g)].map(([, n]) => Number(n));
    expect(counts.reduce((a, b) => a + b, 0)).toBe(done);
  });
});
