import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { grounds, LETTERS } from '../../../client/theme/index.ts';
import { root } from '../../../server/fingerprint.mjs';

const client = join(root, 'client');
const pages = readdirSync(client).filter((name) => name.endsWith('.html'));

it.each(pages)('%s says in both languages that it opens, and nothing else', (name) => {
  const page = readFileSync(join(client, name), 'utf8');
  const body = /<body>(.*)<\/body>/s.exec(page)?.[1]?.trim();
  expect(body).toBe('<p class="opening">Opening … <span lang="es">Abriendo …</span></p>');
  expect(page).toContain('<html lang="en">');
});

it('is said in the ink of the paper that it stands on, and in our letters', () => {
  const styles = readFileSync(join(client, 'theme/opening.css'), 'utf8');
  expect(styles).toContain(`color: ${grounds.paper.ink};`);
  expect(styles).toContain(`'${LETTERS}'`);
  expect(readFileSync(join(client, 'theme/page.css'), 'utf8')).toContain(grounds.paper.ground);
});
