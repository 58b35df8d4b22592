import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Shell } from '../../server/cli/command.ts';
import { runCommandLine } from '../../server/cli/run.ts';
import { starterFiles } from '../../server/starter/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import { applied, type Folder } from './apply.ts';
import { type Fence, fencesOf } from './fences.ts';

const EVE = instant(Date.parse('2026-11-25T21:00:00Z'));
const DAY = '2026-11-26';

/** What a reader has after the first step: the files that an empty folder is given. */
function starter(): Folder {
  const { kitchen, catalogue, cookPlan } = starterFiles(EVE, 'America/Chicago', 'three dishes');
  const files: [string, unknown][] = [
    ['kitchen.json', kitchen],
    ['catalogue.json', catalogue],
    [`plans/${DAY}.json`, cookPlan],
  ];
  return new Map(structuredClone(files));
}

/** What `plan` prints of a folder, every run of blanks as one. */
async function planOf(folder: Folder) {
  const path = mkdtempSync(join(tmpdir(), 'coalface-guide-'));
  try {
    for (const [file, value] of folder) {
      mkdirSync(dirname(join(path, file)), { recursive: true });
      writeFileSync(join(path, file), JSON.stringify(value));
    }
    let said = '';
    const shell: Shell = {
      folder: path,
      now: () => EVE,
      say: (text) => {
        said += text;
      },
    };
    const { exit, complaints } = await runCommandLine(['plan', '.', '--day', DAY], shell);
    return { exit, said: said.replaceAll(/ +/g, ' '), complaints };
  } finally {
    rmSync(path, { recursive: true });
  }
}

const pageAt = (name: string) =>
  readFileSync(new URL(`../../docs/${name}`, import.meta.url), 'utf8');

const isExample = ({ language, words }: Fence) =>
  language === 'json' || (language === 'text' && (words[0] === 'plan' || words[0] === 'wrong'));

describe.each(['your-kitchen.md', 'catalogue.md'])('following docs/%s', (name) => {
  const fences = fencesOf(pageAt(name)).filter(isExample);
  /** The folder as it is when the reader has come to each block. */
  const folders: Folder[] = [];

  beforeAll(() => {
    let folder = starter();
    for (const fence of fences) {
      const next = fence.language === 'json' ? applied(folder, fence) : folder;
      folders.push(next);
      if (!fence.words.includes('!')) folder = next;
    }
  });
  afterAll(() => folders.splice(0));

  const numbered = fences.map((fence, index) => ({ index, line: fence.line, fence }));

  it('there is something to do, and something to see', () => {
    expect(fences.filter(({ language }) => language === 'json').length).toBeGreaterThan(5);
    expect(fences.filter(({ language }) => language === 'text').length).toBeGreaterThan(3);
  });

  it.each(numbered.filter(({ fence }) => fence.words[0] === 'plan'))(
    'the day can be planned as far as line $line, and says what the page shows',
    async ({ index, fence }) => {
      const { exit, said, complaints } = await planOf(folders[index] ?? new Map());
      expect(complaints).toEqual([]);
      expect(exit).toBe(0);
      for (const line of fence.text.split('\n')) {
        expect(said).toContain(line.trim().replaceAll(/ +/g, ' '));
      }
    },
  );

  it.each(numbered.filter(({ fence }) => fence.words[0] === 'wrong'))(
    'the mistake before line $line is told as the page says',
    async ({ index, fence }) => {
      expect(fences[index - 1]?.words).toContain('!');
      const { exit, complaints } = await planOf(folders[index - 1] ?? new Map());
      expect(exit).toBe(1);
      const lines = fence.text.split('\n');
      expect(complaints).toEqual(lines.map((line) => expect.stringContaining(line)));
    },
  );
});
