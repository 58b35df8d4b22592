import { checkBandSpanish } from './check-band-spanish.ts';
import { checkSpanish } from './check-spanish.ts';
import { happeningSpanish } from './happening-spanish.ts';
import { interfaceSpanish } from './interface-spanish.ts';
import { logSpanish } from './log-spanish.ts';
import { spanish } from './spanish.ts';
import type { Tongue } from './tongue.ts';
import { whoSpanish } from './who-spanish.ts';

export const spanishTongue: Tongue = {
  ui: interfaceSpanish,
  phrases: spanish,
  log: logSpanish,
  happening: happeningSpanish,
  who: whoSpanish,
  check: checkSpanish,
  band: checkBandSpanish,
};
