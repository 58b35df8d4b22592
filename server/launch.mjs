import { ensureBuilt } from './ensure-built.mjs';
import { checkNode, ensureInstalled } from './install.mjs';
import { leaveWithNpm } from './leave-with-npm.mjs';

// `npm start`: whatever is missing is made, then the hub takes over this very process. One
// process means Ctrl-C, a kill and the exit code are the hub's own, and none is left behind.

checkNode();
ensureInstalled();
ensureBuilt();
leaveWithNpm();

const { register } = await import('tsx/esm/api');
register();
await import('./main.ts');
