/** Most letters of a note: more is not read in a margin. */
export const NOTE_MAX = 280;

/** Why words cannot be kept as a note. */
export type NoteFault = 'empty' | 'long' | 'sign';

/**
 * What no reader sees as it was written: what steers a terminal or turns the way of reading, and
 * halves of letters.
 */
const NO_LETTER = /[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]/u;

/**
 * What is wrong with the words of a note, which the pad and the hub both hold it to; null where it
 * can be kept.
 * @example noteFault('  ') //=> 'empty'
 */
export function noteFault(words: string): NoteFault | null {
  const note = words.trim();
  if (note === '') return 'empty';
  if (NO_LETTER.test(note)) return 'sign';
  return note.length > NOTE_MAX ? 'long' : null;
}
