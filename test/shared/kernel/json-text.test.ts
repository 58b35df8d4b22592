import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJsonText } from '../../../shared/kernel/index.ts';

const faultOf = (text: string) => {
  const read = readJsonText(text);
  return read.ok ? [] : read.problems.map(({ path, found, allowed }) => [path, found, allowed]);
};

function parsed(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

describe('the text of a JSON file', () => {
  it('is read as the standard has it, whatever is in it', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const read = readJsonText(text);
        if (read.ok) expect(read.value).toEqual(JSON.parse(text));
        else expect(read.problems[0]?.allowed).toBe('each name once');
      }),
    );
  });

  it('is refused where the standard refuses it, and nowhere else', () => {
    const scraps = ['{', '}', '[', ']', ',', ':', '"a"', '"b\\u00e9"', '"\\x"', "'c'", ' ', '\n'];
    const words = ['1', '01', '-', '.5', '1e3', '1.', 'true', 'nul', '"', '"\t"', '\u007F'];
    const text = fc.array(fc.constantFrom(...scraps, ...words), { maxLength: 9 });
    fc.assert(
      fc.property(text, (parts) => {
        const written = parts.join('');
        const read = readJsonText(written);
        const isTwice = !read.ok && read.problems[0]?.allowed === 'each name once';
        expect(read.ok || isTwice).toBe(parsed(written) !== null);
      }),
      { numRuns: 2000 },
    );
  });

  it('may begin with a byte order mark and end its lines as Windows does', () => {
    expect(readJsonText('\uFEFF{\r\n  "a": 1\r\n}\r\n')).toEqual({ ok: true, value: { a: 1 } });
  });

  it.each([
    ['a comma too many', '{\n  "a": [1, 2,]\n}', 'line 2, column 14', ']', 'no comma before this'],
    ['a comma forgotten', '{\n  "a": 1\n  "b": 2\n}', 'line 3, column 3', '"b": 2', 'a comma, or'],
    ['a decimal comma', '{ "a": 1,5 }', 'line 1, column 10', '5', 'a decimal takes a point'],
    ['quotes of a word processor', '{ “a”: 1 }', 'line 1, column 3', '“', 'straight double quotes'],
    ['single quotes', "{ 'a': 1 }", 'line 1, column 3', "'", 'straight double quotes'],
    ['a remark', '{\n  // ours\n}', 'line 2, column 3', '/', 'no remarks'],
    ['a word without quotes', '{ "a": yes }', 'line 1, column 8', 'yes', 'a text in quotes'],
    ['a text left open', '{ "a": "x\n}', 'line 1, column 8', '"x', 'closed on its own line'],
    ['a file cut short', '{\n  "a": [1', 'line 2, column 10', 'the end of the file', '] that'],
    ['an empty file', '', 'line 1, column 1', 'the end of the file', 'a text in quotes'],
    ['two values', '{}\n{}', 'line 2, column 1', '{', 'nothing after the end'],
    ['no colon', '{ "a" 1 }', 'line 1, column 7', '1', 'a colon'],
    ['another encoding', '{ "a": "jalape\uFFFDo" }', 'line 1, column 15', 'a byte', 'UTF-8'],
  ])('%s is said with its line and what would be right', (_slip, text, path, found, allowed) => {
    expect(faultOf(text)).toEqual([
      [path, expect.stringContaining(found), expect.stringContaining(allowed)],
    ]);
  });

  it('says a name that stands twice, since one of the two would be lost without a word', () => {
    const text = '{\n  "crew": [\n    { "id": "rosa", "id": "omar" }\n  ]\n}';
    expect(faultOf(text)).toEqual([
      ['crew[0].id', 'a second one in line 3, column 21', 'each name once'],
    ]);
  });
});
