import type { Celsius } from '../kernel/index.ts';
import { celsius } from '../kernel/index.ts';
import type { Sureness } from './prior.ts';

/** What is round a piece. Air that takes vapour off; a wrap is what lies between. */
export type Wrap = {
  /** Of wrap and the air under it, W/m²K; infinite for none. */
  readonly contactWPerM2K: number;
  /** The share of the vapour that gets out. */
  readonly passes: number;
  /** Of its outside; that of the meat where there is none given. */
  readonly emissivity?: number;
  readonly sureness: Sureness;
};

export type WrapName = keyof typeof wraps;

/**
 * Judged. Uncoated kraft paper lets some 1,000 g of vapour through a square metre a day at 38 °C
 * and 90 % humidity (of that order, from memory): about a thirtieth of what a film of air does.
 * Foil leaks at its folds; it also keeps radiant heat out, the less the greasier it gets.
 */
export const wraps = {
  none: { contactWPerM2K: Number.POSITIVE_INFINITY, passes: 1, sureness: 'textbook' },
  paper: { contactWPerM2K: 120, passes: 0.04, sureness: 'judged' },
  foil: { contactWPerM2K: 120, passes: 0.01, emissivity: 0.35, sureness: 'judged' },
} as const satisfies Record<string, Wrap>;

/** Air that stays as it is: a bench to rest on, a cabinet, a cooler. */
export type Room = {
  readonly airC: Celsius;
  readonly filmWPerM2K: number;
  readonly emissivity: number;
  readonly humidityRatio: number;
};

/**
 * Films of textbooks: still air 3 to 6, a cabinet's slow fan 8, a cooler 8, a blast chiller 25
 * W/m²K.
 */
export const rooms = {
  bench: { airC: celsius(24), filmWPerM2K: 4, emissivity: 0.9, humidityRatio: 0.009 },
  cabinet: { airC: celsius(66), filmWPerM2K: 8, emissivity: 0.5, humidityRatio: 0.1 },
  cooler: { airC: celsius(3), filmWPerM2K: 8, emissivity: 0.9, humidityRatio: 0.004 },
  chiller: { airC: celsius(0), filmWPerM2K: 25, emissivity: 0.5, humidityRatio: 0.003 },
} as const satisfies Record<string, Room>;
