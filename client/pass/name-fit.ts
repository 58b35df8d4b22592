/**
 * How a name and what is in it have room on one line: with "has", bare, with the name in small
 * letters, or not at all, on two.
 */
export type NameFit = 'has' | 'bare' | 'lean' | 'long';

/** How wide a letter is, in minutes of arc: of a name, of a name in small letters, beside it. */
const NAME = 17.3;
const LEAN = 13.8;
const BESIDE = 12.6;
const GAP = 9;

/** The first that fits into so many minutes of arc. */
export function fitOf(
  { name, bare, has }: { readonly name: string; readonly bare: string; readonly has: string },
  wide: number,
): NameFit {
  const beside = (words: string) => (words === '' ? 0 : GAP + BESIDE * words.length);
  if (NAME * name.length + beside(has) <= wide) return 'has';
  if (NAME * name.length + beside(bare) <= wide) return 'bare';
  return LEAN * name.length + beside(bare) <= wide ? 'lean' : 'long';
}

/** One name that has room only in small letters has all of its page in them. */
export const isLean = (fit: NameFit): boolean => fit === 'lean' || fit === 'long';
