const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** A figure before its unit, or before the half of the day. */
const MEASURED = /(?<=\d) (?=(?:°[CF]|lb|oz|kg|g|ml|min|h|am|pm)(?!\p{L}))/gu;

/**
 * A text as it may stand in a page; no line ends between a figure and its unit.
 * @example escaped('salt & pepper') //=> 'salt &amp; pepper'
 */
export function escaped(text: string): string {
  return text.replace(MEASURED, '\u00a0').replace(/[&<>"]/g, (sign) => entities[sign] ?? sign);
}

/**
 * An element with a class; what is inside is markup already.
 * @example element('p', 'mind', 'x') //=> '<p class="mind">x</p>'
 */
export function element(name: string, kind: string, inside: string): string {
  return `<${name} class="${kind}">${inside}</${name}>`;
}

/** Paragraphs of one kind, one for each text that there is. */
export function paragraphs(kind: string, ...texts: readonly (string | null)[]): string {
  return texts
    .filter((text) => text !== null && text !== '')
    .map((text) => element('p', kind, escaped(text ?? '')))
    .join('');
}

/** A text in quotes of a style sheet, where it can end neither the string nor the element. */
export function quotedForStyle(text: string): string {
  return `"${text.replace(/["\\<>\n]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)}"`;
}
