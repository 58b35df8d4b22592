import { posix } from 'node:path';
import { isCode, lineAt, type Source } from './source.ts';

/** One broken rule: `path:line what is wrong`. */
export type Fault = string;

const MAX_COLUMNS = 100;
const MAX_LINES = 250;
const MAX_TEST_LINES = 400;

const isHandWritten = ({ path }: Source) => isCode(path) || /\.(css|html|jsonc)$/.test(path);

/** A line of the page is read whole; an address that cannot be broken may stand out. */
export function longLines(source: Source): Fault[] {
  if (!isHandWritten(source)) return [];
  return source.text.split('\n').flatMap((line, index) => {
    const columns = [...line].length;
    if (columns <= MAX_COLUMNS || /https?:\/\/\S{40}/.test(line)) return [];
    return [`${source.path}:${index + 1} is ${columns} columns wide, ${MAX_COLUMNS} are allowed`];
  });
}

/** A file says one thing and is read in one sitting. */
export function longFiles(source: Source): Fault[] {
  if (!isHandWritten(source) || source.path === 'biome.jsonc') return [];
  const allowed = source.path.startsWith('test/') ? MAX_TEST_LINES : MAX_LINES;
  const lines = source.text.replace(/\n$/, '').split('\n').length;
  return lines > allowed ? [`${source.path}:1 has ${lines} lines, ${allowed} are allowed`] : [];
}

const VAGUE = /^(utils?|utilities|helpers?|misc|common|stuff|lib)$/;

/** A name that fits everything says nothing. */
export function vagueNames({ path }: Source): Fault[] {
  const vague = path.split('/').find((part) => VAGUE.test(part.split('.')[0] ?? ''));
  return vague === undefined ? [] : [`${path}:1 is named by where it lies, not by what it says`];
}

const UNFINISHED = /\b(TODO|FIXME|XXX|HACK)\b/;
const SKIPPED = /\b(it|test|describe)\.(only|skip|todo|fails|fixme|skipIf|runIf)\b/;
const UNCHECKED = /@ts-(ignore|nocheck|expect-error)|eslint-disable/;
const OF_ONE_MACHINE = /\/(home|Users|root)\/\w/;

/** Words that say a thing is unfinished, unchecked, or true on one machine only. */
export function forbiddenWords({ path, text }: Source): Fault[] {
  if (!isCode(path) && !/\.(css|html|jsonc?|md|yml)$/.test(path)) return [];
  if (path === 'package-lock.json' || path.startsWith('test/tidy/')) return [];
  return text.split('\n').flatMap((line, index) =>
    [UNFINISHED, SKIPPED, UNCHECKED, OF_ONE_MACHINE].flatMap((words) => {
      const found = words.exec(line)?.[0];
      return found === undefined ? [] : [`${path}:${index + 1} says "${found}"`];
    }),
  );
}

const CHANCE_OR_CLOCK = /\bMath\.random\b|\bDate\.now\b|\bnew (TZ)?Date(Mini)?(\(\s*\)|\b(?!\())/g;

/** What the linter cannot see of a clock or of chance in `shared/`: they are arguments there. */
export function impureCalls({ path, text }: Source): Fault[] {
  if (!path.startsWith('shared/') || !isCode(path)) return [];
  return [...text.matchAll(CHANCE_OR_CLOCK)].map(
    (match) => `${path}:${lineAt(text, match.index)} calls ${match[0]}`,
  );
}

const TOP_LEVEL = new Set([
  ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json'],
  ...['server', 'client', 'shared', 'test', 'docs'],
  ...['tsconfig.json', 'biome.jsonc'],
  ...['vite.config.ts', 'vitest.config.ts', 'playwright.config.ts'],
  ...['.ci', '.gitignore', '.npmrc', '.editorconfig'],
]);

/** A newcomer sees the rooms of the house and nothing lying in front of them. */
export function strayFiles({ path }: Source): Fault[] {
  const [top = ''] = path.split(posix.sep);
  return TOP_LEVEL.has(top) ? [] : [`${path}:1 has no place at the top of the project`];
}

/** Rules about the text of one file, each under the sentence it stands for. */
export const textRules = {
  'no line is wider than a page': longLines,
  'no file is too long for one sitting': longFiles,
  'no file has a name that fits everything': vagueNames,
  'nothing is unfinished, skipped, unchecked or true on one machine only': forbiddenWords,
  'shared/ has no clock and no chance': impureCalls,
  'nothing lies about at the top of the project': strayFiles,
};
