import { learnLanguage } from '../../shared/words/index.ts';
import { heedHands } from '../hands/index.ts';
import { showStandards } from '../standard/show-standards.ts';
import type { Reader } from '../theme/index.ts';
import { lay } from '../theme/index.ts';
import type { Settings } from './settings.ts';
import { readSettings } from './settings.ts';
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
  await learnLanguage(settings.language);
  showStandards();
  heedHands(settings, reader);
  return { settings, address };
}
