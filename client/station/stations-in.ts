import type { StationId } from '../../shared/kernel/index.ts';

/**
 * The stations that an address names, each once.
 * @example stationsIn('trim,mix') //=> ['trim', 'mix']
 */
export function stationsIn(word: string | null): StationId[] {
  const named = (word ?? '').split(',').filter((each) => each !== '');
  return [...new Set(named)] as StationId[];
}
