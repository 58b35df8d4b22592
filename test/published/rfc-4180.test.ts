import { describe, expect, it } from 'vitest';
import { csvOf } from '../../shared/record/index.ts';

/**
 * RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files, section 2. Rules
 * and examples from memory: the text was not looked up.
 */
describe('RFC 4180, section 2', () => {
  it('ends each record with CR LF (rule 1)', () => {
    const table = { header: ['aaa', 'bbb', 'ccc'], rows: [['zzz', 'yyy', 'xxx']] };
    expect(csvOf(table)).toBe('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n');
  });

  it('leaves spaces as part of a field (rule 4)', () => {
    expect(csvOf({ header: [' a'], rows: [['b ']] })).toBe(' a\r\nb \r\n');
  });

  it('puts fields with line breaks, quotes and commas in quotes (rule 6)', () => {
    const table = { header: ['aaa'], rows: [['b\r\nbb'], ['b,b'], ['b\nb']] };
    expect(csvOf(table)).toBe('aaa\r\n"b\r\nbb"\r\n"b,b"\r\n"b\nb"\r\n');
  });

  it('doubles a quote inside quotes (rule 7)', () => {
    const table = { header: ['aaa', 'b"bb', 'ccc'], rows: [] };
    expect(csvOf(table)).toBe('aaa,"b""bb",ccc\r\n');
  });

  it('writes nothing for what is not there, and figures with a point', () => {
    expect(csvOf({ header: ['a', 'b'], rows: [[null, 1.5]] })).toBe('a,b\r\n,1.5\r\n');
  });
});
