import { learnLanguage } from '../../shared/words/index.ts';
import { heedHands } from '../hands/index.ts';
import { showStandards } from '../standard/show-standards.ts';
import type { Reader } from '../theme/index.ts';
import { LETTERS, lay } from '../theme/index.ts';
import type { Settings } from './settings.ts';
import { readSettings } from './settings.ts';
import { heedLanguage } from './speak.ts';
import { faultsDoor, tellFaults } from './tell-faults.ts';

/** Reads what this device knows of itself, learns its language and lays the paper. */
export async function openWall(reader: Reader = 'standing'): Promise<{
  readonly settings: Settings;
  readonly address: URLSearchParams;
}> {
  const address = new URLSearchParams(location.search);
  const settings = readSettings(address);
  tellFaults(faultsDoor(settings.token));
  document.documentElement.lang = settings.language;
  lay(settings, reader);
  // Asked for now, they are there for the first words; what waits for them is drawn in others.
  // Where they do not come, the browser's own are written with.
  document.fonts?.load(`600 1em '${LETTERS}'`).catch(() => {});
  await learnLanguage(settings.language);
  showStandards();
  heedLanguage();
  heedHands(reader, () => (document.documentElement.lang === 'es' ? 'es' : 'en'));
  return { settings, address };
}
