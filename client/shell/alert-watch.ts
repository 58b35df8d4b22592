import type { AlertsAsk, AlertsShown } from '../../shared/protocol/index.ts';

/** How often the hub is asked who is wanted. */
const ASK_MS = 5_000;
/** A call that was missed for longer than this is seen, and not heard any more. */
const STALE_MS = 60_000;

export type AskAlerts = (asked: AlertsAsk) => Promise<AlertsShown | null>;

type Parts = {
  readonly ask: AskAlerts;
  readonly asked: AlertsAsk;
  /** The hub's clock, in milliseconds. */
  readonly now: () => number;
  readonly changed: () => void;
  /** Makes a call heard, and says who is wanted where there is no line for it. */
  readonly call: (shown: AlertsShown) => void;
};

/** The hub's door for who is wanted; null where it does not answer, or may not. */
export function alertsDoor(
  token: string | null,
  ask: typeof fetch = fetch.bind(window),
): AskAlerts {
  return async (asked) => {
    try {
      const response = await ask('/api/alerts', {
        method: 'POST',
        headers: {
          'Content-Type': 'application/json',
          ...(token && { Authorization: `Bearer ${token}` }),
        },
        body: JSON.stringify(asked),
      });
      const answer = (await response.json()) as AlertsShown | { readonly ok: false };
      return answer.ok ? answer : null;
    } catch {
      return null;
    }
  };
}

/**
 * Knows who is wanted, and sounds once for each call while the hub has this screen sound. Nobody
 * has to say that they heard it: what is done is gone.
 */
export class AlertWatch {
  readonly #parts: Parts;
  #shown: AlertsShown | null = null;
  /** The last call that is known here; those from before are none of its business. */
  #calledAt: number | null = null;
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  get shown(): AlertsShown | null {
    return this.#shown;
  }

  start(): void {
    this.stop();
    this.#timer = setInterval(() => void this.look(), ASK_MS);
    void this.look();
  }

  stop(): void {
    clearInterval(this.#timer);
  }

  async look(): Promise<void> {
    const { ask, asked, now, changed, call } = this.#parts;
    const shown = await ask(asked);
    this.#shown = shown;
    const { calledAt = null, isHeard = false } = shown ?? {};
    const isNew = calledAt !== null && calledAt > (this.#calledAt ?? 0);
    if (shown && isNew && isHeard && now() - calledAt < STALE_MS) call(shown);
    if (isNew) this.#calledAt = calledAt;
    changed();
  }
}
