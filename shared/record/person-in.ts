import type { PersonId } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';

/** How the crew list calls somebody; null where nobody is known. */
export function personIn({ crew }: Kitchen, person: PersonId | null): string | null {
  return crew.find(({ id }) => id === person)?.name ?? person;
}
