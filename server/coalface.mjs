import { pathToFileURL } from 'node:url';
import { builtHub } from './built.mjs';
import { ensureHubBuilt } from './ensure-built.mjs';
import { checkNode, ensureInstalled } from './install.mjs';

// `npm run -s coalface -- …`: whatever is missing is made, then the command line is read.

checkNode();
ensureInstalled();
ensureHubBuilt();
process.setSourceMapsEnabled(true);
await import(pathToFileURL(builtHub('cli')).href);
