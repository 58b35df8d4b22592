import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../../server/fingerprint.mjs';
import { everyTable, leavesOf, type Table } from './every-table.ts';

const tables = await everyTable();
const sources = ['shared', 'client', 'server'].flatMap((folder) => sourcesIn(join(root, folder)));

function sourcesIn(folder: string): { path: string; text: string }[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => ({ path: join(folder, file), text: readFileSync(join(folder, file), 'utf8') }));
}

type Sentence = (...given: unknown[]) => unknown;
const isSentence = (value: unknown): value is Sentence => typeof value === 'function';

/** Names of what a sentence is given, as its source has them. */
const namesOf = (sentence: Sentence): string[] =>
  (/^(?:async )?\(?([^)=]*?)\)?\s*=>/.exec(sentence.toString())?.[1] ?? '')
    .replace(/[{}\s]/g, '')
    .split(',')
    .filter(Boolean);

/** Says it with marks in place of what it is given, however it takes that. */
function saidWithMarks(sentence: Sentence): string {
  const marks = new Proxy({}, { get: (_, key) => `‹${String(key)}›` });
  const isNamed = /^\(?\{/.test(sentence.toString());
  const given = isNamed ? [marks] : namesOf(sentence).map((_, i) => `‹${i}›`);
  return String(sentence(...given));
}

const marksIn = (said: string) => [...new Set(said.match(/‹\w+›/g) ?? [])].sort();

it.each(tables)('$name says in Spanish whatever it says in English', ({ name, en, es }) => {
  const paths = (table: Table) => leavesOf(table, name).map(({ path }) => path);
  expect(paths(es)).toEqual(paths(en));
  const empty = [...leavesOf(en, name), ...leavesOf(es, name)].filter(({ value }) => value === '');
  expect(empty).toEqual([]);
});

it.each(tables)('$name names in Spanish what it names in English', ({ name, en, es }) => {
  const inSpanish = new Map(leavesOf(es, name).map(({ path, value }) => [path, value]));
  const differing = leavesOf(en, name).flatMap(({ path, value }) => {
    const other = inSpanish.get(path);
    if (!isSentence(value) || !isSentence(other)) return [];
    const [said, dicho] = [saidWithMarks(value), saidWithMarks(other)];
    return String(marksIn(said)) === String(marksIn(dicho)) ? [] : [[path, said, dicho]];
  });
  expect(differing).toEqual([]);
});

/** What is counted, by the names that our sentences give it. */
const COUNTED =
  /^(?:count|taps|tasks|pieces|portions|cooks|minutes|more|missing|sold|many|waits|lines|counted)$/;
/** Words that end like a plural and are none. */
const SINGULAR = /^(?:más|menos|después|later|less|pass|mas|is)$/;

describe.each(tables)('$name', ({ name, en, es }) => {
  it.each([
    ['en', en],
    ['es', es],
  ] as const)('says of one that it is one, in %s', (_, table) => {
    const wrong = leavesOf(table, name).flatMap(({ path, value }) => {
      if (!isSentence(value) || /^\(?\{/.test(value.toString())) return [];
      const names = namesOf(value);
      if (!names.some((each) => COUNTED.test(each))) return [];
      const said = String(value(...names.map((each) => (COUNTED.test(each) ? 1 : 'X'))));
      const plural = [...said.matchAll(/(?<![\d:.,])1 (\p{L}+s)(?!\p{L})/gu)].map(
        ([, word]) => word,
      );
      return plural.some((word = '') => !SINGULAR.test(word)) ? [[path, said]] : [];
    });
    expect(wrong).toEqual([]);
  });
});

/**
 * Names that are read somewhere: as a word of the code, or in quotes as the kind of something that
 * a table is asked about. Where a table is written is no reading.
 */
function namesRead(): ReadonlySet<string> {
  const isOfOneLanguage = /(?:english|spanish)\.ts$/;
  const lines = sources
    .filter(({ path }) => !isOfOneLanguage.test(path))
    .flatMap(({ text }) => text.split('\n'));
  return new Set(
    lines.flatMap((line) => {
      const defined = /^\s+(?:readonly )?(\w+)(?:\(|\??:)/.exec(line)?.[1];
      const quoted = [...line.matchAll(/'([^']*)'/g)].map(([, name = '']) => name);
      const words = line.replace(/'[^']*'/g, '').match(/\w+/g) ?? [];
      return [...quoted, ...words].filter((name) => name !== defined);
    }),
  );
}

it('every word that is written is said somewhere', () => {
  const read = namesRead();
  const unused = tables
    .flatMap(({ name, en }) => leavesOf(en, name))
    .filter(({ key }) => !read.has(key))
    .map(({ path }) => path);
  expect(unused).toEqual([]);
});
