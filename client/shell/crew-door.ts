import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Intent, Person, View } from '../../shared/view/index.ts';
import { clockTime, type Say, ui } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import type { Sync } from '../sync/index.ts';
import { backChoices } from './back-choices.ts';

/** What the head of a wall offers, and what it asks where a box was tapped that asks further. */
export type CrewOffer = {
  readonly isOpen: boolean;
  readonly asks: string;
  readonly choices: readonly Choice[];
};

/** A strip that nobody taps closes again, so that it hides nothing. */
const STRIP_MS = 30_000;

/**
 * The strip under the head of a wall: who goes out, till when, and comes in again. Whoever is named
 * first is asked when that is; nothing is kept before. It closes once something was taken, and
 * where another screen has said meanwhile what it asks.
 */
export class CrewDoor implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #isOpen = false;
  /** Who is asked about, as they were when that was asked. */
  #leaving: Person | null = null;
  #closing: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#closing);
  }

  readonly toggle = (): void => this.#become({ isOpen: !this.#isOpen });

  offer(view: View | null, sync: Sync, say: Say): CrewOffer {
    if (!view) return { isOpen: this.#isOpen, asks: '', choices: [] };
    const asked = this.#leaving;
    const leaving = view.people.find(({ id }) => id === asked?.id);
    if (asked && leaving && isSame(asked, leaving)) return this.#when(leaving, view, { sync, say });
    if (asked) this.#become({ isOpen: false });
    const choices = view.people
      .filter(({ onShift, isOut }) => onShift || isOut)
      .flatMap((person) => this.#boxes(person, { sync, say }));
    return { isOpen: this.#isOpen, asks: '', choices };
  }

  #boxes(person: Person, { sync, say }: Way): Choice[] {
    const { id: hand, name, isOut, backAt } = person;
    const words = ui[say.language];
    const ask = () => this.#become({ isOpen: true, leaving: person });
    if (!isOut) return [{ label: words.goesOut(name), choose: ask }];
    const at = backAt === null ? null : clockTime(backAt, say);
    const comesIn = () => this.#take(sync, { kind: 'handIn', hand });
    return [
      { label: words.comesIn(name), choose: comesIn },
      { label: words.backAt(name, at), choose: ask },
    ];
  }

  #when({ id: hand, name }: Person, { endsAt }: View, { sync, say }: Way): CrewOffer {
    const words = ui[say.language];
    const choices = backChoices({
      now: sync.hubNow(),
      endsAt,
      say,
      choose: (backAt) => this.#take(sync, { kind: 'handOut', hand, backAt }),
    });
    const close = () => this.#become({ isOpen: false });
    const leave = { label: words.leaveIt, choose: close, leaves: true };
    const asks = words.whenBack(name);
    return { isOpen: this.#isOpen, asks, choices: [...choices, leave] };
  }

  #take(sync: Sync, intent: Intent): void {
    // Closed before the tap is drawn: what it changes is no news to this strip.
    this.#become({ isOpen: false });
    sync.tap(intent);
  }

  #become({ isOpen, leaving = null }: { isOpen: boolean; leaving?: Person | null }): void {
    this.#isOpen = isOpen;
    this.#leaving = leaving;
    clearTimeout(this.#closing);
    if (isOpen) this.#closing = setTimeout(() => this.#become({ isOpen: false }), STRIP_MS);
    this.#host.requestUpdate();
  }
}

type Way = { readonly sync: Sync; readonly say: Say };

const isSame = (a: Person, b: Person) =>
  a.isOut === b.isOut && a.backAt === b.backAt && a.onShift === b.onShift;
