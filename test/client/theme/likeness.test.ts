import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { grounds, LETTERS } from '../../../client/theme/index.ts';
import { root } from '../../../server/fingerprint.mjs';

const styles = readFileSync(join(root, 'client/theme/likeness.css'), 'utf8');

/** Ground, inks and letters before the first script has run are those that it lays. */
it.each(['paper', 'night'] as const)(
  'what stood is drawn on the ground of %s, in its inks',
  (of) => {
    const night = styles.indexOf("[data-ground='night']");
    const own = of === 'night' ? styles.slice(night) : styles.slice(0, night);
    for (const name of ['ground', 'ink', 'soft'] as const) {
      expect(own).toContain(`--${name}: ${grounds[of][name]};`);
    }
    expect(styles).toContain(`'${LETTERS}'`);
  },
);
