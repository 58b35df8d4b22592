import type { SheetMade } from '../../shared/protocol/index.ts';

/**
 * Hands a file to the browser, to be kept. Sheets too: opened from here they would have to keep to
 * the rules of our pages, which let no style of their own in; from the disk they print as made.
 */
export function keepFile({ name, type, text }: SheetMade): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}

/** Long enough for the browser to have written it. */
const KEPT_MS = 60_000;
