/** How a name and what is in it have room: on one line, with the name in small letters, on two. */
export type NameFit = 'one' | 'lean' | 'long';

/** How wide a letter is, in minutes of arc: of a name, of a name in small letters, beside it. */
const NAME = 17.3;
const LEAN = 13.8;
const BESIDE = 12.6;
const GAP = 9;

/** The first that fits into so many minutes of arc; two brackets are as wide as a letter. */
export function fitOf(
  { name, allergens }: { readonly name: string; readonly allergens: string },
  wide: number,
): NameFit {
  const beside = allergens === '' ? 0 : GAP + BESIDE * (allergens.length + 1);
  if (NAME * name.length + beside <= wide) return 'one';
  return LEAN * name.length + beside <= wide ? 'lean' : 'long';
}

/** One name that has room only in small letters has all of its page in them. */
export const isLean = (fit: NameFit): boolean => fit === 'lean' || fit === 'long';
