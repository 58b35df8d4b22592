import type { DayState } from '../../shared/day/index.ts';
import type { Hello, ScreenLink } from '../../shared/protocol/index.ts';
import {
  type Alert,
  type AlertBook,
  alertsIn,
  emptyBook,
  heed,
  noticesOf,
  ratesOf,
} from '../../shared/view/index.ts';
import type { Clock, Stop } from '../clock.ts';
import { liveOf } from '../day-rules.ts';
import type { Hub } from '../hub/index.ts';
import { guarded, type Report } from '../report.ts';

/** How often it is looked what needs a hand, though nothing was kept: time alone brings some. */
const LOOK_MS = 5_000;
/** The world's time after something was kept: the walls that show it go first. */
const SOON_MS = 100;

type Parts = {
  readonly hub: Pick<Hub<DayState>, 'running' | 'state' | 'heed' | 'attend'>;
  readonly clock: Pick<Clock, 'speed' | 'now' | 'after' | 'every'>;
  readonly report: Report;
};

/**
 * Who is called to what, how often, and which one screen sounds. It is kept beside the day and not
 * in its log: a call changes nothing, and a hub that begins anew calls anew for what still stands.
 */
export class AlertDesk {
  readonly #parts: Parts;
  readonly #stop: Stop;
  /** The screens that are told, in the order in which they came, and what each was told last. */
  readonly #told = new Map<ScreenLink, string>();
  #book: AlertBook;
  #alerts: readonly Alert[] = [];
  #awaited: Stop | null = null;

  constructor(parts: Parts) {
    const { hub, clock } = parts;
    this.#parts = parts;
    this.#book = emptyBook(clock.now());
    this.#stop = clock.every(LOOK_MS, () => this.#look());
    hub.heed(() => this.#lookSoon());
    hub.attend({
      come: (link) => {
        if (!isTold(link.hello)) return;
        this.#told.set(link, '');
        // The day goes first: by it a screen knows what time it is here.
        clock.after(0, () => this.#tell());
      },
      gone: (link) => {
        if (this.#told.delete(link)) this.#tell();
      },
    });
  }

  close(): void {
    this.#stop();
    this.#awaited?.();
  }

  #lookSoon(): void {
    const { clock } = this.#parts;
    this.#awaited ??= clock.after(SOON_MS * (clock.speed ?? 1), () => {
      this.#awaited = null;
      this.#look();
    });
  }

  #look(): void {
    const { hub, clock, report } = this.#parts;
    try {
      const live = hub.state.plan ? liveOf(hub.running) : null;
      this.#alerts = live && !hub.state.happened.closed ? alertsIn(live) : [];
      this.#book = heed(this.#book, this.#alerts, clock.now());
    } catch (fault) {
      report({ level: 'fault', what: 'it could not be worked out who is wanted', fault });
    }
    this.#tell();
  }

  /** Tells each screen what it does not know yet. The first that is put up to sound does. */
  #tell(): void {
    if (this.#told.size === 0) return;
    const { clock, report } = this.#parts;
    const wanted = {
      notices: noticesOf(this.#alerts),
      rates: ratesOf(this.#book, clock.now()),
      calledAt: this.#book.rings.at(-1)?.at ?? null,
    };
    const sounding = [...this.#told.keys()].find(({ hello }) => hello.sounds);
    for (const [link, before] of this.#told) {
      const message = { ...wanted, isHeard: link === sounding };
      const said = JSON.stringify(message);
      if (said === before) continue;
      this.#told.set(link, said);
      guarded(report, 'a screen was not told who is wanted', () => link.wanted(message));
    }
  }
}

/** A desk says it in a line of its own; a wall of the pit where it is put up to sound. */
const isTold = ({ face, sounds = false }: Hello) =>
  face.kind === 'desk' || (face.kind === 'smoker' && sounds);
