import { pathToFileURL } from 'node:url';
import { builtHub } from './built.mjs';
import { HELP, readWords } from './command-line.mjs';
import { ensureBuilt } from './ensure-built.mjs';
import { checkNode, ensureInstalled } from './install.mjs';
import { leaveWithNpm } from './leave-with-npm.mjs';

// `npm start`: whatever is missing is made, then the hub takes over this very process. One
// process means Ctrl-C, a kill and the exit code are the hub's own, and none is left behind.

checkNode();
const words = readWords(process.argv.slice(2));
if (words.help) {
  process.stdout.write(HELP);
  process.exit(0);
}
if ('wrong' in words) {
  for (const each of words.wrong) console.error(each);
  console.error('All options: npm start -- --help');
  process.exit(2);
}
ensureInstalled();
ensureBuilt();
leaveWithNpm();
process.setSourceMapsEnabled(true);
await import(pathToFileURL(builtHub('main')).href);
