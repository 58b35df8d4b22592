/** How well a number is known: out of a book, measured by others on the like, or judged. */
export type Sureness = 'textbook' | 'measured' | 'judged';

/**
 * Something about a piece or a smoker that nobody can read off it, and what is believed of it
 * before the first reading: a standard normal number z, stretched. A `ratio` is median ×
 * spread^z, a `shift` median + spread × z, and `between` two bounds any value is about as likely
 * as another.
 */
export type Unknown = (
  | { readonly scale: 'ratio' | 'shift'; readonly median: number; readonly spread: number }
  | { readonly scale: 'between'; readonly low: number; readonly high: number }
) & { readonly sureness: Sureness; readonly source: string };

/** 1/(1 + exp(-1.702 z)) is the normal distribution function within 0.01 (Haley 1952). */
const PROBIT = 1.702;

/**
 * The value that z stands for.
 * @example meaningOf({ scale: 'ratio', median: 9, spread: 1.3, … }, 1) //=> 11.7
 */
export function meaningOf(unknown: Unknown, z: number): number {
  switch (unknown.scale) {
    case 'ratio':
      return unknown.median * unknown.spread ** z;
    case 'shift':
      return unknown.median + unknown.spread * z;
    case 'between':
      return unknown.low + (unknown.high - unknown.low) / (1 + Math.exp(-PROBIT * z));
  }
}

/** Where each of some names stands among them. @example placesOf(['a', 'b']) //=> { a: 0, b: 1 } */
export function placesOf<Name extends string>(names: readonly Name[]): Record<Name, number> {
  const places: Partial<Record<Name, number>> = {};
  for (const [index, name] of names.entries()) places[name] = index;
  return places as Record<Name, number>;
}
