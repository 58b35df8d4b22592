import type { Kilograms, PersonId, TaskId, Text } from '../kernel/index.ts';
import type { Breach } from '../plan/index.ts';
import type { Deed } from './deed.ts';

/** Curing salt as it was weighed for a batch by one person and read again by another. */
export type CureFact = {
  readonly kind: 'cureWeighed';
  readonly task: TaskId;
  /** Of the mix. */
  readonly weightKg: Kilograms;
  readonly first: PersonId;
  readonly second: PersonId;
};

/** The same, asked for. */
export type CureIntent = {
  readonly kind: 'weighCure';
  readonly task: TaskId;
  readonly weightKg: Kilograms;
  readonly first: PersonId;
  readonly second: PersonId;
};

/** Why a weighing was not kept, or what keeps a cure from being begun, as data. */
export type CureRefusal =
  | { readonly rule: 'not-a-cure' }
  /** It stands in two names, and these are two people's. */
  | { readonly rule: 'cure-wants-two' }
  | { readonly rule: 'cure-not-weighed'; readonly mix: Text; readonly weightKg: Kilograms }
  /** What was weighed would go beyond the limit. */
  | { readonly rule: 'cure-off'; readonly mix: Text; readonly breach: Breach };

/** A weighing that stands. */
export type CureWeighed = Deed & Pick<CureFact, 'weightKg' | 'first' | 'second'>;
