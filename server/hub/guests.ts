import type { Refusal } from '../../shared/day/index.ts';
import { canonical, type ScreenId } from '../../shared/kernel/index.ts';
import type { ScreenLink } from '../../shared/protocol/index.ts';
import { guarded, type Report } from '../report.ts';

/** Told of each screen that is shown the day, and when it goes. */
export type Attending = {
  come(link: ScreenLink): void;
  gone(link: ScreenLink): void;
};

/** Every screen that is linked, shown something or not. */
export type Guests = {
  /** Why it may not be shown its face, or null. */
  come(link: ScreenLink): Refusal | null;
  go(link: ScreenLink): void;
  /** From now on. */
  attend(attending: Attending): void;
  turnAway(link: ScreenLink, refusal: Refusal): void;
  /**
   * Something happened: whoever may now be shown what it might not before, or the other way round,
   * is let go at once. A screen comes again by itself, and is then taken as what it now is. One
   * that was put up elsewhere is told so, also where it might stay: it is to show what it is for.
   */
  lookAgain(): void;
  readonly screens: ReadonlySet<ScreenId>;
};

export function createGuests({
  mayShow,
  placeOf,
  turnAway,
  report,
}: {
  readonly mayShow: (hello: ScreenLink['hello']) => Refusal | null;
  /** Where a screen was put up; only whether it changes is looked at. */
  readonly placeOf: (hello: ScreenLink['hello']) => unknown;
  /** Tells a screen why it is shown nothing. */
  readonly turnAway: (link: ScreenLink, refusal: Refusal) => void;
  readonly report: Report;
}): Guests {
  const guests = new Map<ScreenLink, { readonly refusal: string; readonly place: string }>();
  const attending: Attending[] = [];
  const attend = (what: keyof Attending, link: ScreenLink) => {
    for (const each of attending) {
      guarded(report, `${link.hello.screenId} was not attended to`, () => each[what](link));
    }
  };
  return {
    come(link) {
      const refusal = mayShow(link.hello);
      const place = canonical(placeOf(link.hello));
      guests.set(link, { refusal: canonical(refusal), place });
      if (!refusal) attend('come', link);
      return refusal;
    },
    go(link) {
      const before = guests.get(link);
      guests.delete(link);
      if (before?.refusal === canonical(null)) attend('gone', link);
    },
    attend: (each) => void attending.push(each),
    turnAway,
    lookAgain() {
      for (const [link, before] of guests) {
        const isMoved = canonical(placeOf(link.hello)) !== before.place;
        const may = mayShow(link.hello);
        if (canonical(may) === before.refusal && !isMoved) continue;
        const refusal: Refusal | null = may ?? (isMoved ? { rule: 'screen-elsewhere' } : null);
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
