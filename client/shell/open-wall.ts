import { showStandards } from '../standard/show-standards.ts';
import type { Reader } from '../theme/index.ts';
import { lay } from '../theme/index.ts';
import type { Settings } from './settings.ts';
import { readSettings } from './settings.ts';

/** Reads what this device knows of itself and lays the paper. */
export function openWall(reader: Reader = 'standing'): {
  readonly settings: Settings;
  readonly address: URLSearchParams;
} {
  const address = new URLSearchParams(location.search);
  const settings = readSettings(address);
  document.documentElement.lang = settings.language;
  lay(settings, reader);
  showStandards();
  return { settings, address };
}
