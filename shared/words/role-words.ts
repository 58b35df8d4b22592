import type { Language } from './say.ts';

export type RoleName = 'wall' | 'pit' | 'pass' | 'desk';

/** What a screen is there for. @example roleWords.es.pit //=> 'fuego' */
export const roleWords: Readonly<Record<Language, Readonly<Record<RoleName, string>>>> = {
  en: { wall: 'wall', pit: 'pit', pass: 'pass', desk: 'desk' },
  es: { wall: 'tablero', pit: 'fuego', pass: 'pase', desk: 'escritorio' },
};
