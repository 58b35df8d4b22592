import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Instant, PersonId } from '../../../shared/kernel/index.ts';
import { after, instant, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import { type Alert, emptyBook, heed, noticesOf, ratesOf } from '../../../shared/view/index.ts';

const NOW = instant(Date.UTC(2026, 2, 4, 18));
const at = (s: number) => after(NOW, seconds(s));

/** Something that is worked out from the times, as that a service will be late. */
const alert = (who: string, cause: string, key = cause, byAt: Instant = at(600)): Alert => ({
  ...{ key, cause, who: who as PersonId, name: who, byAt },
  asks: { kind: 'late', service: { en: cause }, task: { en: 'Wrap' } },
});

const said: Alert['asks'][] = [
  { kind: 'down', smoker: { en: 'Pit A' } },
  { kind: 'cold', smoker: { en: 'Pit A' } },
  { kind: 'help', whom: 'Theo', task: { en: 'Lift the pans' } },
  { kind: 'correct', check: 'cooling', thing: { en: 'Ribs' } },
];
const [isOut] = said;

/** Looked at every five seconds; what stands then. */
function calls(standing: (s: number) => readonly Alert[], forS: number) {
  let book = emptyBook(NOW);
  for (let s = 0; s <= forS; s += 5) book = heed(book, standing(s), at(s));
  return book;
}

const ofWhom = ({ rings }: ReturnType<typeof calls>) =>
  rings.map(({ who, at: when, causes }) => [who, (when - NOW) / 1000, causes]);

describe('calls', () => {
  it('come once what is worked out has stood for twenty seconds', () => {
    expect(ofWhom(calls(() => [alert('rosa', 'lunch')], 300))).toEqual([['rosa', 20, 1]]);
  });

  it.each(said)('come at once where somebody or a thermometer said it: $kind', (asks) => {
    const pressing = { ...alert('rosa', 'this'), asks };
    const book = calls((s) => (s >= 60 ? [pressing] : []), 300);
    expect(ofWhom(book)).toEqual([['rosa', 60, 1]]);
  });

  it('that are made at once say with them what else stands, which then calls no more', () => {
    const fire = { ...alert('rosa', 'smoker a'), asks: must(isOut, 'what is out') };
    const book = calls((s) => [alert('rosa', 'lunch'), ...(s >= 10 ? [fire] : [])], 900);
    expect(ofWhom(book)).toEqual([['rosa', 10, 2]]);
  });

  it('do not come of what a re-timing brings and takes away again', () => {
    const flickers = (s: number) => (s % 30 < 15 ? [alert('rosa', 'late')] : []);
    expect(ofWhom(calls((s) => (s < 15 ? flickers(s) : []), 300))).toEqual([]);
  });

  it('are one for all that comes from one cause, and one for all that is new at once', () => {
    const many = ['x', 'y', 'z'].map((key) => alert('rosa', 'smoker a', key));
    const all = [...many, alert('rosa', 'help'), alert('ines', 'check')];
    expect(ofWhom(calls(() => all, 600))).toEqual([
      ['rosa', 20, 2],
      ['ines', 20, 1],
    ]);
  });

  it('end with what is done; nobody says that they heard, and nothing is called twice', () => {
    const book = calls((s) => (s < 200 ? [alert('rosa', 'help')] : []), 900);
    expect(ofWhom(book)).toHaveLength(1);
    expect(noticesOf([])).toEqual([]);
  });

  it('wait where somebody was called twice, and come once they may again', () => {
    const book = calls((s) => {
      const causes = ['a', 'b', 'c', 'd'].filter((_, n) => s >= n * 60);
      return causes.map((cause) => alert('rosa', cause));
    }, 1_300);
    expect(ofWhom(book)).toEqual([
      ['rosa', 20, 1],
      ['rosa', 80, 2],
      ['rosa', 620, 4],
    ]);
  });

  it('show what comes first by its time, and how many causes wait behind it', () => {
    const all = [
      alert('rosa', 'soon', 's', at(60)),
      alert('rosa', 'a', 'x'),
      alert('rosa', 'a', 'y'),
    ];
    expect(noticesOf(all)).toMatchObject([{ first: { cause: 'soon' }, more: 1 }]);
  });
});

// ISA-18.2 and EEMUA 191 per person, as told second-hand: about one in ten minutes is acceptable,
// two in any ten minutes the most that can be managed, twelve in an hour as well.
describe('whatever happens, for each person', () => {
  const story = fc.array(
    fc.record({
      who: fc.constantFrom('rosa', 'ines'),
      cause: fc.integer({ min: 0, max: 30 }),
      fromS: fc.integer({ min: 0, max: 7_200 }),
      lastsS: fc.integer({ min: 5, max: 3_600 }),
      asks: fc.constantFrom(alert('', '').asks, ...said),
    }),
    { maxLength: 60 },
  );

  it('no ten minutes have more than two calls, no hour more than eight', () => {
    fc.assert(
      fc.property(story, (all) => {
        const standing = (s: number) =>
          all
            .filter(({ fromS, lastsS }) => fromS <= s && s < fromS + lastsS)
            .map(({ who, cause, asks }) => ({ ...alert(who, `${cause}`), asks }));
        let book = emptyBook(NOW);
        for (let s = 0; s <= 9_000; s += 30) {
          book = heed(book, standing(s), at(s));
          for (const { mostInTenMin, lastHour } of ratesOf(book, at(s))) {
            if (mostInTenMin > 2 || lastHour > 8) return false;
          }
        }
        return true;
      }),
      { numRuns: 40 },
    );
  });

  it('what stands long enough is told in the end', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3_600 }), { maxLength: 20 }), (froms) => {
        const standing = (s: number) =>
          froms.flatMap((fromS, n) => (fromS <= s ? [alert('rosa', `${n}`)] : []));
        const book = calls(standing, 3_600 + minutes(11));
        return [...book.standing.values()].every(({ isTold }) => isTold);
      }),
      { numRuns: 20 },
    );
  });
});
