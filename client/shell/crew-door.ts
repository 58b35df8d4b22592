import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { PersonId } from '../../shared/kernel/index.ts';
import type { Person, View } from '../../shared/view/index.ts';
import { clockTime, type Say, ui } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import type { Sync } from '../sync/index.ts';
import { backChoices } from './back-choices.ts';

/** What the head of a wall offers, and what it asks where a box was tapped that asks further. */
export type CrewOffer = { readonly asks: string; readonly choices: readonly Choice[] };

const NOTHING: CrewOffer = { asks: '', choices: [] };

/**
 * Who goes out, till when, and comes in again. Whoever is named first is asked when that is;
 * nothing is kept before.
 */
export class CrewDoor implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #leaving: PersonId | null = null;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  offer(view: View | null, sync: Sync, say: Say): CrewOffer {
    if (!view) return NOTHING;
    const leaving = view.people.find(({ id }) => id === this.#leaving);
    if (leaving) return this.#when(leaving, view, { sync, say });
    const choices = view.people
      .filter(({ onShift, isOut }) => onShift || isOut)
      .flatMap((person) => this.#boxes(person, { sync, say }));
    return { asks: '', choices };
  }

  #boxes({ id: hand, name, isOut, backAt }: Person, { sync, say }: Way): Choice[] {
    const words = ui[say.language];
    if (!isOut) return [{ label: words.goesOut(name), choose: () => this.#ask(hand) }];
    const at = backAt === null ? null : clockTime(backAt, say);
    return [
      { label: words.comesIn(name), choose: () => void sync.tap({ kind: 'handIn', hand }) },
      { label: words.backAt(name, at), choose: () => this.#ask(hand) },
    ];
  }

  #when({ id: hand, name }: Person, { endsAt }: View, { sync, say }: Way): CrewOffer {
    const words = ui[say.language];
    const choices = backChoices({
      now: sync.hubNow(),
      endsAt,
      say,
      choose: (backAt) => {
        sync.tap({ kind: 'handOut', hand, backAt });
        this.#ask(null);
      },
    });
    const leave = { label: words.leaveIt, choose: () => this.#ask(null), leaves: true };
    return { asks: words.whenBack(name), choices: [...choices, leave] };
  }

  #ask(hand: PersonId | null): void {
    this.#leaving = hand;
    this.#host.requestUpdate();
  }
}

type Way = { readonly sync: Sync; readonly say: Say };
