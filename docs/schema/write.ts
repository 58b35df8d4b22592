import { writeFileSync } from 'node:fs';
import { schemaFiles } from './schemas.ts';

for (const [name, text] of schemaFiles()) {
  writeFileSync(new URL(name, import.meta.url), text);
}
