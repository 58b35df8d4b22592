import { meant } from '../kernel/index.ts';
import type { Kind } from './row-schema.ts';
import { kinds } from './row-schema.ts';

/** Other words for a kind. Meat that is not said to be whole is judged as if it were needled. */
const otherWords: Readonly<Record<string, Kind>> = {
  whole: 'intact',
  needled: 'injected',
  'non-intact': 'injected',
  tenderized: 'injected',
  tumbled: 'injected',
  meat: 'injected',
  beef: 'injected',
  pork: 'injected',
  lamb: 'injected',
  comminuted: 'ground',
  minced: 'ground',
  sausage: 'ground',
  vegetable: 'plant',
};

export type KindNamed =
  | { readonly ok: true; readonly kind: Kind }
  | { readonly ok: false; readonly allowed: readonly string[]; readonly meant?: string };

/**
 * The kind that a word names, or the words there are and which of them was likely meant.
 * @example kindNamed('needled') //=> { ok: true, kind: 'injected' }
 */
export function kindNamed(word: string): KindNamed {
  const said = word.trim().toLowerCase();
  const kind = kinds.find((one) => one === said) ?? otherWords[said];
  if (kind !== undefined) return { ok: true, kind };
  const likely = meant(said, [...kinds, ...Object.keys(otherWords)]);
  return { ok: false, allowed: kinds, ...(likely === undefined ? {} : { meant: likely }) };
}
