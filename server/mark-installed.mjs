import { markInstalled } from './install.mjs';

// Run by npm after every install (`postinstall`), so that one made by hand counts as well.

markInstalled();
