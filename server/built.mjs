import { join } from 'node:path';
import { root } from './fingerprint.mjs';

/** The folder of built screens. */
export const BUILT_SCREENS = join(root, 'dist/screens');

/** The folder of the built hub, one file for each beginning and what they share. */
export const BUILT_HUB = join(root, 'dist/hub');

/**
 * @param {'main' | 'cli' | 'draft-work' | 'forecast-work'} beginning of the hub's process, of the
 * command line, or of a thread
 * @returns {string} the file to run
 */
export const builtHub = (beginning) => join(BUILT_HUB, `${beginning}.js`);
