import type { Text } from '../kernel/index.ts';
import type { Breach } from '../plan/index.ts';
import type { CheckKind, CorrectiveAction } from './check-event.ts';

/** Why what was looked at could not be kept, or what it keeps from happening, as data. */
export type CheckRefusal =
  /** A check stands in somebody's name. */
  | { readonly rule: 'who-checked' }
  /** This day has no such thing, or its limits have no row for it. */
  | { readonly rule: 'nothing-to-check' }
  | { readonly rule: 'reading-missing' }
  /** Neither failed nor missed. */
  | { readonly rule: 'nothing-to-correct' }
  | { readonly rule: 'correction-not-allowed'; readonly allowed: readonly CorrectiveAction[] }
  /** A limit was not kept, or nobody looked, and nothing has been done about it. */
  | {
      readonly rule: 'barred';
      readonly batch: Text;
      readonly why: 'failed' | 'missed' | 'discarded';
      readonly check: CheckKind;
      /** Null where the route alone sets the limit. */
      readonly breach: Breach | null;
    };
