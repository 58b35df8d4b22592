import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { onceAFrame } from '../parts/ink.ts';

type Host = ReactiveControllerHost & { readonly renderRoot: ParentNode };

/**
 * How high the parts are that stand over the lines of a wall. Measured when the browser has laid
 * them out, since whoever asks while a wall is drawn would have it laid out twice.
 */
export class OverHeight implements ReactiveController {
  readonly #host: Host;
  readonly #names: string;
  /** In a frame of its own: what is drawn anew because of a size may change others within one. */
  readonly #observer = new ResizeObserver(onceAFrame(() => this.#measure()));
  #parts: readonly HTMLElement[] = [];
  #px = 0;

  /** `names`: selects the parts. */
  constructor(host: Host, names: string) {
    this.#host = host;
    this.#names = names;
    host.addController(this);
  }

  get px(): number {
    return this.#px;
  }

  hostUpdated(): void {
    const parts = [...this.#host.renderRoot.querySelectorAll<HTMLElement>(this.#names)];
    if (parts.length === this.#parts.length && parts.every((part, i) => part === this.#parts[i])) {
      return;
    }
    this.#observer.disconnect();
    this.#parts = parts;
    for (const part of parts) this.#observer.observe(part);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
    this.#parts = [];
  }

  #measure(): void {
    const px = this.#parts.reduce((sum, { offsetHeight }) => sum + offsetHeight, 0);
    if (px === this.#px) return;
    this.#px = px;
    this.#host.requestUpdate();
  }
}
