/** A field of a table: text as it is, a number in figures with a point, nothing where null. */
export type Field = string | number | null;

export type Table = {
  readonly header: readonly string[];
  readonly rows: readonly (readonly Field[])[];
};

/**
 * A table as comma-separated values (RFC 4180): lines end with CR LF, and a field with a comma, a
 * quote or a line end in it stands in quotes, with its own quotes doubled.
 * @example csvOf({ header: ['a'], rows: [['x "y", z']] }) //=> 'a\r\n"x ""y"", z"\r\n'
 */
export function csvOf({ header, rows }: Table): string {
  return [header, ...rows].map((row) => `${row.map(fieldOf).join(',')}\r\n`).join('');
}

function fieldOf(field: Field): string {
  const text = field === null ? '' : String(field);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
