import { describe, expect, it } from 'vitest';
import { checkReferences, filePath, meant, shown } from '../../../shared/kernel/index.ts';

describe('a slip of the finger', () => {
  it.each([
    ['kinfe', 'knife'],
    ['Knife', 'knife'],
    ['pitt', 'pit'],
    ['carv', 'carve'],
  ])('%s is taken for %s', (written, likely) => {
    expect(meant(written, ['knife', 'pit', 'mix', 'carve'])).toBe(likely);
  });

  it('is not seen in another word', () => {
    expect(meant('forklift', ['knife', 'pit', 'mix', 'carve'])).toBeUndefined();
    expect(meant('knife', [])).toBeUndefined();
  });
});

describe('a place in a file', () => {
  it('is written as a path from the root', () => {
    expect(filePath(['cuts', 2, 'piece', 'low'])).toBe('cuts[2].piece.low');
    expect(filePath([])).toBe('(the whole file)');
  });

  it('shows a long value cut short', () => {
    expect(shown('x'.repeat(200))).toHaveLength(60);
    expect(shown(undefined)).toBe('nothing');
  });
});

describe('references within a file', () => {
  const references = [{ from: 'dishes[].cut', to: 'cuts[].id' }];

  it('that lead nowhere are named with what was likely meant', () => {
    const json = { cuts: [{ id: 'ribs' }, { id: 'shoulder' }], dishes: [{ cut: 'ribbs' }] };
    expect(checkReferences(json, { ids: [], references })).toEqual([
      { path: 'dishes[0].cut', found: '"ribbs"', allowed: 'one of: ribs, shoulder', meant: 'ribs' },
    ]);
  });

  it('are checked also where other parts of the file are broken', () => {
    const json = { cuts: 7, dishes: [null, { cut: 4 }, { cut: 'ribs' }] };
    const faults = checkReferences(json, { ids: ['cuts[].id'], references });
    expect(faults).toEqual([
      { path: 'dishes[2].cut', found: '"ribs"', allowed: 'one of: (none is given)' },
    ]);
  });

  it('say which name is given twice, at its second place', () => {
    const json = { cuts: [{ id: 'ribs' }, { id: 'ribs' }] };
    const faults = checkReferences(json, { ids: ['cuts[].id'], references: [] });
    expect(faults.map(({ path }) => path)).toEqual(['cuts[1].id']);
  });
});
