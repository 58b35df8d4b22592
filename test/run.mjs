import { checkNode, ensureInstalled } from '../server/install.mjs';

// `npm test` on a clean clone: first what it needs to run at all, then everything in suite.ts.

checkNode();
ensureInstalled();

const { register } = await import('tsx/esm/api');
register();
await import('./suite.ts');
