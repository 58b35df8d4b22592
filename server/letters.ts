import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const FILE =
  '@fontsource-variable/atkinson-hyperlegible-next/files/' +
  'atkinson-hyperlegible-next-latin-wght-normal.woff2';

/** The walls' own letters as a `data:` address, so that a sheet needs no file beside it. */
export function lettersAddress(): string {
  const file = createRequire(import.meta.url).resolve(FILE);
  return `data:font/woff2;base64,${readFileSync(file).toString('base64')}`;
}
