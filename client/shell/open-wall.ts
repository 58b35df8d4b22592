import { heedHands } from '../hands/index.ts';
import { showStandards } from '../standard/show-standards.ts';
import type { Reader } from '../theme/index.ts';
import { LETTERS, lay } from '../theme/index.ts';
import type { Settings } from './settings.ts';
import { heedLanguage } from './speak.ts';
import { faultsDoor, tellFaults } from './tell-faults.ts';
import { address, learnt, settings } from './words-wanted.ts';

/** Lays the paper for what this device knows of itself; nothing can be said before `learnt`. */
export function openWall(reader: Reader = 'standing'): {
  readonly settings: Settings;
  readonly address: URLSearchParams;
  readonly learnt: Promise<void>;
} {
  tellFaults(faultsDoor(settings.token));
  document.documentElement.lang = settings.language;
  lay(settings, reader);
  // Asked for now, they are there for the first words; what waits for them is drawn in others.
  // Where they do not come, the browser's own are written with.
  document.fonts?.load(`600 1em '${LETTERS}'`).catch(() => {});
  showStandards();
  heedLanguage();
  heedHands(reader, () => (document.documentElement.lang === 'es' ? 'es' : 'en'));
  return { settings, address, learnt };
}
