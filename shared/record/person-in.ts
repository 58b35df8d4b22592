import { type DayState, everIn } from '../day/index.ts';
import type { PersonId } from '../kernel/index.ts';

/**
 * How the crew list calls somebody, or did before they left it: who reads a record was not there.
 * Null where nobody is known.
 */
export function personIn(
  state: Pick<DayState, 'plan' | 'kitchens'>,
  person: PersonId | null,
): string | null {
  const { plan } = state;
  if (!plan) return person;
  const known = { state, index: { plan } };
  return everIn(known, ({ crew }) => crew.find(({ id }) => id === person))?.name ?? person;
}
