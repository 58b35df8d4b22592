import type { Text } from '../kernel/index.ts';
import type { CheckOn } from './check-event.ts';
import type { PlanIndex } from './plan-index.ts';
import { watchedIn } from './watched.ts';

/** What hand or eye is to find, and what it finds before; null where the catalogue has no words. */
export type FeelAsked = { readonly there: Text; readonly notYet: Text | null };

/** Only the end of a cook is felt: what is held, cooled and washed a number or a clock tells. */
export function feelAsked(index: PlanIndex, on: CheckOn): FeelAsked | null {
  if (on.kind !== 'end-temperature') return null;
  const check = watchedIn(index).get(on.batch)?.probe?.check;
  return check ? { there: check.feel, notYet: check.notYet ?? null } : null;
}
