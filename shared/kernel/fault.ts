/** What is wrong at one place of a file that a person wrote. */
export type FileFault = {
  /** From the root of the file, `cuts[2].piece.low`. */
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
  /** What was likely meant, where one allowed word is near. */
  readonly meant?: string;
};

/** A file as it was read, or all that is wrong with it at once. */
export type FileRead<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly FileFault[] };

/** @example filePath(['cuts', 2, 'piece', 'low']) //=> 'cuts[2].piece.low' */
export function filePath(keys: readonly PropertyKey[]): string {
  const written = keys.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`));
  return written.join('').replace(/^\./, '') || '(the whole file)';
}

/** A value shown as it was written, cut short. @example shown('250F') //=> '"250F"' */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/**
 * The word that was likely meant: the nearest by insertions, deletions, replacements and swaps of
 * neighbours, if it is near enough to be a slip of the finger.
 * @example meant('kinfe', ['knife', 'pit']) //=> 'knife'
 */
export function meant(word: string, among: readonly string[]): string | undefined {
  const near = among
    .map((candidate) => ({ candidate, slips: slips(word.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.slips - b.slips)[0];
  const allowed = Math.max(1, Math.floor(word.length / 3));
  return near && near.slips <= allowed ? near.candidate : undefined;
}

/** Optimal string alignment distance (Levenshtein 1966, Damerau 1964). */
function slips(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const cost = (i: number, j: number) => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j++) {
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          cost(i - 1, j) + 1,
          cost(i, j - 1) + 1,
          cost(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1),
          swapped ? cost(i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
  }
  return cost(a.length, b.length);
}
