import type { WhoRefusal } from '../day/index.ts';

type Rule = WhoRefusal['rule'];
type Said<Key extends Rule> = (refusal: Extract<WhoRefusal, { rule: Key }>) => string;

/** Why somebody was not let in or may not do this, in one language. */
export type WhoPhrases = { readonly [Key in Rule]: Said<Key> };
