import type { Refusal } from '../../shared/day/index.ts';
import { canonical, type ScreenId } from '../../shared/kernel/index.ts';
import type { ScreenLink } from '../../shared/protocol/index.ts';
import { guarded, type Report } from '../report.ts';

/** Every screen that is linked, shown something or not. */
export type Guests = {
  /** Why it may not be shown its face, or null. */
  come(link: ScreenLink): Refusal | null;
  go(link: ScreenLink): void;
  turnAway(link: ScreenLink, refusal: Refusal): void;
  /**
   * Something happened: whoever may now be shown what it might not before, or the other way round,
   * is let go at once. A screen comes again by itself, and is then taken as what it now is.
   */
  lookAgain(): void;
  readonly screens: ReadonlySet<ScreenId>;
};

export function createGuests({
  mayShow,
  turnAway,
  report,
}: {
  readonly mayShow: (hello: ScreenLink['hello']) => Refusal | null;
  /** Tells a screen why it is shown nothing. */
  readonly turnAway: (link: ScreenLink, refusal: Refusal) => void;
  readonly report: Report;
}): Guests {
  const guests = new Map<ScreenLink, string>();
  return {
    come(link) {
      const refusal = mayShow(link.hello);
      guests.set(link, canonical(refusal));
      return refusal;
    },
    go: (link) => void guests.delete(link),
    turnAway,
    lookAgain() {
      for (const [link, before] of guests) {
        const refusal = mayShow(link.hello);
        if (canonical(refusal) === before) continue;
        guarded(report, 'a link could not be closed', () => {
          if (refusal) turnAway(link, refusal);
          link.close();
        });
      }
    },
    get screens() {
      return new Set([...guests.keys()].map(({ hello }) => hello.screenId));
    },
  };
}
