import { LETTERS } from '../theme/index.ts';

/** Of a letter's height, on the average: where no glass is there to measure on. */
const LETTER_SHARE = 0.56;
const WEIGHT = { word: 600, name: 800 } as const;

export type Weight = keyof typeof WEIGHT;

const glass = document.createElement('canvas').getContext?.('2d') ?? null;
const known = new Map<string, number>();
/** Sentences with a time in them are never the same for long, and a desk stands open for weeks. */
const MOST_KNOWN = 5_000;

// What was measured before the letters came was measured in others.
document.fonts?.addEventListener?.('loadingdone', () => known.clear());

/** How wide words are, in letters so high. */
export function wordsPx(words: string, letterPx: number, weight: Weight = 'word'): number {
  const key = `${weight} ${letterPx} ${words}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const px = measured(words, letterPx, weight);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, px);
  return px;
}

function measured(words: string, letterPx: number, weight: Weight): number {
  if (!glass) return words.length * letterPx * LETTER_SHARE;
  glass.font = `${WEIGHT[weight]} ${letterPx}px '${LETTERS}', sans-serif`;
  return glass.measureText(words).width;
}

/** Words that tell nothing at the end of what is cut off. */
const LITTLE =
  /^(?:a|al|and|at|con|de|del|el|en|entre|for|from|in|into|la|las|los|of|on|the|to|with|y|·|\d+)$/;

/**
 * A title, and what may stand for it where there is less room: its name without what it is for; its
 * first words with a sign that more follow; at last its first alone, which of work is what to do.
 * @example shorter('Trim and sort birds') //=> ['Trim and sort birds', 'Trim and sort…', 'Trim']
 */
export function shorter(title: string): readonly string[] {
  const before = shortened.get(title);
  if (before) return before;
  const titles = shorten(title);
  shortened.set(title, titles);
  return titles;
}

/** Asked for every bar in every frame. */
const shortened = new Map<string, readonly string[]>();

function shorten(title: string): readonly string[] {
  const [name = title] = title.split(' · ');
  const words = name.split(' ');
  const cut = words
    .slice(2)
    .map((_, i) => words.slice(0, -1 - i))
    .filter((some) => !LITTLE.test(some.at(-1) ?? ''))
    .map((some) => `${some.join(' ').replace(/,$/, '')}…`);
  const first = (words[0] ?? '').replace(/,$/, '');
  const isWork = name === title;
  return [...new Set([title, name, ...cut, isWork || first === name ? first : `${first}…`])];
}

/** The longest of these, as they come, that so much room holds. */
export const fitting = (
  words: readonly string[],
  roomPx: number,
  letterPx: number,
): string | undefined => words.find((some) => wordsPx(some, letterPx) <= roomPx);

/** A name, or as many of its letters as so much room holds, with a sign that more follow. */
export function cutTo(name: string, roomPx: number, letterPx: number): string {
  let shown = name;
  for (let letters = name.length - 1; letters > 0; letters--) {
    if (wordsPx(shown, letterPx, 'name') <= roomPx) break;
    shown = `${name.slice(0, letters).trimEnd()}…`;
  }
  return shown;
}
