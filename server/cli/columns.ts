/** Rows of words under each other, two spaces apart; the last word of a row runs on. */
export function columns(rows: readonly (readonly string[])[], indent = '  '): string[] {
  const wide: number[] = [];
  for (const row of rows) {
    row.forEach((word, at) => {
      wide[at] = Math.max(wide[at] ?? 0, lengthOf(word));
    });
  }
  return rows.map((row) => {
    const padded = row.map((word, at) => word + ' '.repeat((wide[at] ?? 0) - lengthOf(word)));
    return `${indent}${padded.join('  ')}`.trimEnd();
  });
}

const lengthOf = (word: string) => [...word].length;
