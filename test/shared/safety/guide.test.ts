import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../../server/fingerprint.mjs';
import type { Row } from '../../../shared/safety/index.ts';
import {
  celsiusCode,
  foodCode,
  profileAfter,
  readLimits,
  rowsOf,
} from '../../../shared/safety/index.ts';

const guide = readFileSync(join(root, 'docs/safety.md'), 'utf8');
const [before = '', after = ''] = guide.split('### `celsius`');

/** Every printed amount of a limit; "at once" is said in words. */
const figuresOf = (row: Row) =>
  [...JSON.stringify(row.limit).matchAll(/"([<\d][^"]* (?:°F|°C|s|min|h|d|lb|kg|ppm|%))"/g)]
    .map(([, figure = '']) => figure)
    .filter((figure) => figure !== '0 s');
const isRoastTable = ({ id }: Row) => id === 'end-roast' || id === 'reheat-whole-roast';
const delivered = new Set<Row>(foodCode.rows);

/** The line of a row, which must have its figures, its section and how sure it is. */
function expectLine(text: string, row: Row) {
  const line = text.split('\n').find((one) => one.startsWith(`| \`${row.id}\` |`)) ?? '';
  const figures = isRoastTable(row) ? [] : figuresOf(row);
  for (const words of [...figures, row.section, row.sure]) expect(line).toContain(words);
}

describe('the guide to food safety', () => {
  it('shows a change of the limits that is taken as it stands', () => {
    const [, example = ''] = /```\n(\{\n {2}"changes"[\s\S]*?)```/.exec(guide) ?? [];
    const read = readLimits(JSON.parse(example));
    const changes = read.ok ? read.value : [];
    const [row] = rowsOf(profileAfter(foodCode, changes), 'hot-hold');
    expect(row?.limit).toEqual({ atLeast: '140 °F' });
  });

  it.each(foodCode.rows)('has the line of $id with the figures that hold', (row) => {
    expectLine(before, row);
  });

  it('has every row that the profile in °C has of its own', () => {
    const own = celsiusCode.rows.filter((row) => !delivered.has(row) && row.limit !== null);
    expect(own.length).toBeGreaterThan(10);
    for (const row of own) expectLine(after, row);
  });

  it('has the roast table', () => {
    const figures = foodCode.rows.filter(isRoastTable).flatMap(figuresOf);
    const [, roastTable = ''] = before.split('The roast table, 3-401.11(B)(1):');
    expect(figures.length).toBeGreaterThan(30);
    for (const figure of figures) expect(roastTable).toContain(figure);
  });

  it('says first that local code and the licensed authority overrule it', () => {
    expect(guide.split('\n')[2]).toContain('Local code and the licensed authority overrule');
  });
});
