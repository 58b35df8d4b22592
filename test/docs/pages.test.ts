import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { commands } from '../../server/cli/commands.ts';
import { HELP } from '../../server/command-line.mjs';
import { anchorOf, fencesOf, linksOf } from './fences.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

/** Every page that a person reads, from the root of the project. */
function pages(): string[] {
  const within = (folder: string): string[] =>
    readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return within(path);
      return entry.name.endsWith('.md') ? [path] : [];
    });
  return ['README.md', 'DEVELOPERS.md', ...within('docs')];
}

const textOf = (page: string) => readFileSync(join(root, page), 'utf8');

const headingsOf = (text: string) =>
  text
    .replaceAll(/^```[\s\S]*?^```$/gm, '')
    .split('\n')
    .flatMap((line) => /^#+ (.+)$/.exec(line)?.[1] ?? [])
    .map(anchorOf);

/** Calls of npm on a page: in its fenced blocks, and between backticks. */
function callsOf(text: string): string[] {
  const fenced = fencesOf(text).flatMap((fence) => fence.text.split('\n'));
  const quoted = [...text.matchAll(/`(npm [^`\n]+)`/g)].map(([, call = '']) => call);
  return [...fenced, ...quoted]
    .filter((line) => line.startsWith('npm '))
    .map((line) => line.replace(/\s+#.*$/, '').trim());
}

const optionsIn = (words: readonly string[]) =>
  words.flatMap((word) => /^--([a-z-]+)/.exec(word)?.[1] ?? []);

/** What is wrong with a call of npm, or nothing. */
function wrongWith(call: string): string[] {
  const [, first = '', ...rest] = call.split(/ +/);
  const words = rest.filter((word) => word !== '-s');
  const script = first === 'run' ? (words[0] ?? '') : first;
  const after = words.includes('--') ? words.slice(words.indexOf('--') + 1) : [];
  if (first === 'ci' || first === 'install') return [];
  if (!(script in scripts)) return [`no script ${script}`];
  if (script === 'start') {
    return optionsIn(after).flatMap((name) =>
      new RegExp(`^ +--${name}\\b`, 'm').test(HELP) ? [] : [`npm start knows no --${name}`],
    );
  }
  return script === 'coalface' ? wrongCommand(after) : [];
}

function wrongCommand([name = '', ...rest]: readonly string[]): string[] {
  if (name === 'help') return [];
  const command = commands.find((each) => each.name === name);
  if (command === undefined) return [`coalface has no command ${name}`];
  const known = ['help', ...command.options.map((option) => option.name)];
  return optionsIn(rest).flatMap((option) =>
    known.includes(option) ? [] : [`${name} knows no --${option}`],
  );
}

describe.each(pages())('%s', (page) => {
  it('leads only to what is there', () => {
    const lost = linksOf(textOf(page)).filter(({ target, heading }) => {
      const file = target === '' ? page : join(dirname(page), target);
      if (!existsSync(join(root, file))) return true;
      return heading !== '' && !headingsOf(textOf(file)).includes(heading);
    });
    expect(lost).toEqual([]);
  });

  it('shows only commands and options that there are', () => {
    expect(callsOf(textOf(page)).flatMap(wrongWith)).toEqual([]);
  });
});

describe('these checks', () => {
  it.each([
    ['npm run sing', 'no script sing'],
    ['npm start -- --loud', 'npm start knows no --loud'],
    ['npm run -s coalface -- cook my-kitchen', 'coalface has no command cook'],
    ['npm run -s coalface -- plan my-kitchen --colour', 'plan knows no --colour'],
  ])('see what is wrong with %s', (call, wrong) => {
    expect(wrongWith(call)).toEqual([wrong]);
  });

  it('read commands in blocks and in backticks, without what is remarked beside them', () => {
    expect(callsOf('```\nnpm start  # so\n```\nthen `npm test`')).toEqual([
      'npm start',
      'npm test',
    ]);
  });

  it('find every page of the documentation from the README, link by link', () => {
    const open = ['README.md'];
    const seen = new Set<string>();
    for (let page = open.pop(); page !== undefined; page = open.pop()) {
      if (seen.has(page)) continue;
      seen.add(page);
      for (const { target } of linksOf(textOf(page))) {
        const file = join(dirname(page), target);
        const isFolder = !file.endsWith('.md');
        if (!isFolder && existsSync(join(root, file))) open.push(file);
        // A link to a folder shows what is in it.
        if (isFolder && target.endsWith('/')) {
          open.push(...pages().filter((each) => dirname(each) === relative('.', join(file))));
        }
      }
    }
    expect(pages().filter((page) => !seen.has(page))).toEqual([]);
  });
});
