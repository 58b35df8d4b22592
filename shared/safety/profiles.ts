import { celsiusRows } from './celsius-rows.ts';
import type { Profile } from './profile.ts';
import { emptied } from './profile.ts';
import { foodCodeRows } from './rows.ts';

/**
 * The common food code of the United States, in °F. Local code and the licensed authority overrule
 * it.
 */
export const foodCode: Profile = {
  id: 'food-code',
  name: { en: 'Common food code, °F', es: 'Código alimentario común, °F' },
  version: 1,
  rows: foodCodeRows,
};

/** In °C, with the figures 63, 8 and 5. Local law and the licensed authority overrule it. */
export const celsiusCode: Profile = {
  id: 'celsius',
  name: { en: 'In °C: 63, 8 and 5', es: 'En °C: 63, 8 y 5' },
  version: 1,
  rows: celsiusRows,
};

/** What is limited and nothing of how far: for a kitchen to fill in. Until then it refuses. */
export const emptyCode: Profile = {
  id: 'empty',
  name: { en: 'To be filled in', es: 'Por llenar' },
  version: 1,
  rows: foodCodeRows.map(emptied),
};

/** Every profile that is delivered, the usual one first. */
export const profiles: readonly Profile[] = [foodCode, celsiusCode, emptyCode];
