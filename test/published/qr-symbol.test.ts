import fc from 'fast-check';
import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { readQr } from '../shared/paper/read-qr.ts';

const symbol = (text: string) => encode(text, { ecc: 'M', border: 0, boostEcc: false }).data;

describe('a QR symbol', () => {
  /**
   * ISO/IEC 18004:2000, Annex on symbol encoding examples: 01234567 as version 1-M. The codewords
   * were read where pclviewer.com quotes them (rs2/calculator), the standard itself was not.
   */
  it('of the standard’s example has the codewords that the standard prints', () => {
    const printed =
      '00010000 00100000 00001100 01010110 01100001 10000000 11101100 00010001 11101100 00010001 ' +
      '11101100 00010001 11101100 00010001 11101100 00010001 10100101 00100100 11010100 11000001 ' +
      '11101101 00110110 11000111 10000111 00101100 01010101';
    const { codewords, text, version } = readQr(symbol('01234567'));
    expect(codewords.map((word) => word.toString(2).padStart(8, '0')).join(' ')).toBe(printed);
    expect([text, version]).toEqual(['01234567', 1]);
  });

  it('reads back as what was put in, whatever that was', () => {
    const text = fc.oneof(
      fc.string({ minLength: 1, maxLength: 90 }),
      fc.stringMatching(/^[0-9]{1,60}$/),
      fc.stringMatching(/^[0-9A-Z -]{1,60}$/),
      fc.webUrl({ withFragments: true }).filter((url) => url.length < 120),
    );
    fc.assert(
      fc.property(text, (put) => {
        expect(readQr(symbol(put)).text).toBe(put);
      }),
      { numRuns: 60 },
    );
  });

  it('is not read where one module is wrong', () => {
    const wrong = symbol('01234567').map((row, y) =>
      row.map((bit, x) => (y === 12 && x === 12 ? !bit : bit)),
    );
    expect(() => readQr(wrong)).toThrow('not sound');
  });
});
