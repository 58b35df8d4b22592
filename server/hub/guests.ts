import type { Refusal } from '../../shared/day/index.ts';
import { canonical, type ScreenId } from '../../shared/kernel/index.ts';
import type { ScreenLink } from '../../shared/protocol/index.ts';
import { guarded, type Report } from '../report.ts';

/** Every screen that is linked, shown something or not. */
export type Guests = {
  /** Why it may not be shown its face, or null. */
  come(link: ScreenLink): Refusal | null;
  go(link: ScreenLink): void;
  /**
   * Something happened: whoever may now be shown what it might not before, or the other way round,
   * is let go at once. A screen comes again by itself, and is then taken as what it now is.
   */
  lookAgain(): void;
  readonly screens: ReadonlySet<ScreenId>;
};

export function createGuests(
  mayShow: (hello: ScreenLink['hello']) => Refusal | null,
  report: Report,
): Guests {
  const guests = new Map<ScreenLink, string>();
  const standing = (link: ScreenLink) => canonical(mayShow(link.hello));
  return {
    come(link) {
      const refusal = mayShow(link.hello);
      guests.set(link, canonical(refusal));
      return refusal;
    },
    go: (link) => void guests.delete(link),
    lookAgain() {
      for (const [link, before] of guests) {
        if (standing(link) === before) continue;
        guarded(report, 'a link could not be closed', () => link.close());
      }
    },
    get screens() {
      return new Set([...guests.keys()].map(({ hello }) => hello.screenId));
    },
  };
}
