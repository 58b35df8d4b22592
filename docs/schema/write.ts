import { readFileSync, writeFileSync } from 'node:fs';
import { withRights } from './rights.ts';
import { schemaFiles } from './schemas.ts';

for (const [name, text] of schemaFiles()) {
  writeFileSync(new URL(name, import.meta.url), text);
}

const who = new URL('../who.md', import.meta.url);
writeFileSync(who, withRights(readFileSync(who, 'utf8')));
