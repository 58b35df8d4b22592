import { inEach } from './tongue.ts';

/** @example ui.es.start //=> 'empezar' */
export const ui = inEach('ui');
