/**
 * What a person reads, in each language the kitchen speaks; English stands in for a missing one.
 */
export type Text = { readonly en: string; readonly es?: string };

/** A text made of others, in every language that one of them has. */
export function textOf(parts: readonly Text[], write: (words: readonly string[]) => string): Text {
  const en = write(parts.map((part) => part.en));
  if (parts.every((part) => part.es === undefined)) return { en };
  return { en, es: write(parts.map((part) => part.es ?? part.en)) };
}
