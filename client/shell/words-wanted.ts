import { learnLanguage } from '../../shared/words/index.ts';
import { readSettings } from './settings.ts';

// Evaluated before all else of a page, in a file of its own: the words of its language are on
// their way while the wall is still being read.

export const address = new URLSearchParams(location.search);
/** What this device knows of itself. */
export const settings = readSettings(address);
/** Once what this page says can be said. */
export const learnt: Promise<void> = learnLanguage(settings.language);
