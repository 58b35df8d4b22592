import { checkBandEnglish } from './check-band-english.ts';
import { checkEnglish } from './check-english.ts';
import { english } from './english.ts';
import { happeningEnglish } from './happening-english.ts';
import { interfaceEnglish } from './interface-english.ts';
import { logEnglish } from './log-english.ts';
import type { Tongue } from './tongue.ts';
import { whoEnglish } from './who-english.ts';

export const englishTongue: Tongue = {
  ui: interfaceEnglish,
  phrases: english,
  log: logEnglish,
  happening: happeningEnglish,
  who: whoEnglish,
  check: checkEnglish,
  band: checkBandEnglish,
};
