import { inEach } from './tongue.ts';

/** @example logWords.en.nothing //=> 'Nothing has happened yet.' */
export const logWords = inEach('log');
