import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** So long what was said is left to be heard before anything else is: a sentence or two. */
const REST_MS = 8_000;

/**
 * What a part says to those who hear the screen. It says at once what is new, and then nothing for
 * some seconds, and then the newest alone: who hears a wall cannot look away from it.
 */
export class Heard implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #said = '';
  #saidAtMs = Number.NEGATIVE_INFINITY;
  #again: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#again);
  }

  /** What is to be in the live region while the part shows this. */
  of(words: string): string {
    clearTimeout(this.#again);
    if (words === this.#said) return words;
    const restMs = this.#saidAtMs + REST_MS - performance.now();
    if (restMs > 0) {
      this.#again = setTimeout(() => this.#host.requestUpdate(), restMs);
      return this.#said;
    }
    // That nothing is left to say is not heard, and takes no time.
    if (words !== '') this.#saidAtMs = performance.now();
    this.#said = words;
    return words;
  }
}
