import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { everyTable, leavesOf } from '../shared/words/every-table.ts';

/** What stands on paper, in sentences or at the command line; makers name their devices. */
const ON_NO_SCREEN = /^(?:cook\.(?:heads|sides|parts)|(?:record|label|install)Words|phrases)\b/;

const isLabel = (value: unknown): value is string =>
  typeof value === 'string' && value.replace(/ …$/, '').split(' ').length <= 2;

type Label = { readonly en: string; readonly es: string };

async function labelsOnScreens(): Promise<Label[]> {
  const tables = await everyTable();
  return tables.flatMap(({ name, en, es }) => {
    const spanish = new Map(leavesOf(es, name).map(({ path, value }) => [path, value]));
    return leavesOf(en, name).flatMap(({ path, value }) =>
      isLabel(value) && !ON_NO_SCREEN.test(path)
        ? [{ en: value, es: String(spanish.get(path)) }]
        : [],
    );
  });
}

function labelsInPage(): Label[] {
  const page = readFileSync(new URL('../../docs/labels.md', import.meta.url), 'utf8');
  const rows = page
    .split('\n')
    .filter((line) => line.startsWith('| ') && !/^\| English/.test(line));
  return rows.flatMap((row) => {
    const [en = '', spanish = ''] = row
      .split('|')
      .slice(1)
      .map((cell) => cell.trim());
    return spanish.split(' · ').map((es) => ({ en, es }));
  });
}

it('says of each short label in both languages where it comes from, and of no other', async () => {
  const said = (labels: Label[]) =>
    [...new Set(labels.map(({ en, es }) => `${en} = ${es}`))].sort();
  expect(said(labelsInPage())).toEqual(said(await labelsOnScreens()));
});
