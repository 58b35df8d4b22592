import type { Language } from './say.ts';

/** What is set for a screen that hangs on a wall for weeks. */
export type StandWords = {
  readonly bringTablet: string;
  readonly byClock: string;
  readonly fillGlass: string;
  readonly onFirstTap: string;
  readonly asItIs: string;
};

const english: StandWords = {
  bringTablet: 'Bring in a tablet',
  byClock: 'by the clock',
  fillGlass: 'fill the glass',
  onFirstTap: 'at the first tap',
  asItIs: 'as it is',
};

const spanish: StandWords = {
  bringTablet: 'Traer una tableta',
  byClock: 'según la hora',
  fillGlass: 'llenar la pantalla',
  onFirstTap: 'al primer toque',
  asItIs: 'como está',
};

export const standWords: Readonly<Record<Language, StandWords>> = { en: english, es: spanish };
