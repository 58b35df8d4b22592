import type { OpenLink, Wanted } from '../../shared/protocol/index.ts';

/** A call that was missed for longer than this is seen, and not heard any more. */
const STALE_MS = 60_000;
/** So long a link may be dead before the hub knows: what is called there nobody may hear. */
const UNHEARD_MS = 10_000;

type Parts = {
  /** The hub's clock, in milliseconds. */
  readonly now: () => number;
  readonly changed: () => void;
  /** Makes a call heard, and says who is wanted where there is no line for it. */
  readonly call: (wanted: Wanted) => void;
};

/** A link that also brings who is wanted; null while it is down, when nobody here knows. */
export function linkWithCalls(
  open: OpenLink,
  sounds: boolean,
  take: (wanted: Wanted | null) => void,
): OpenLink {
  return (hello, listener) =>
    open(() => ({ ...hello(), sounds }), {
      ...listener,
      wanted: take,
      down: () => {
        take(null);
        listener.down();
      },
    });
}

/**
 * Knows who is wanted, and sounds once for each call while the hub has this screen sound. Nobody
 * has to say that they heard it: what is done is gone.
 */
export class AlertWatch {
  readonly #parts: Parts;
  #shown: Wanted | null = null;
  /** The last call that was this screen's to sound. */
  #calledAt = 0;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  get shown(): Wanted | null {
    return this.#shown;
  }

  take(wanted: Wanted | null): void {
    const { now, changed, call } = this.#parts;
    const { calledAt = null, isHeard = false } = wanted ?? {};
    if (wanted && isHeard && calledAt !== null && calledAt > this.#calledAt) {
      const wasAnothers = this.#shown?.isHeard === false && this.#shown.calledAt === calledAt;
      this.#calledAt = calledAt;
      if (now() - calledAt < (wasAnothers ? UNHEARD_MS : STALE_MS)) call(wanted);
    }
    this.#shown = wanted;
    changed();
  }
}
