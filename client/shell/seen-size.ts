import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** A wall in CSS pixels, with what a minute of arc and a place to tap take on it. */
export type SeenWall = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly arcminPx: number;
  readonly touchPx: number;
};

type Host = ReactiveControllerHost & HTMLElement;

/** The window as the reader's eye sees it; asks for a new drawing when it changes. */
export class SeenSize implements ReactiveController {
  readonly #host: Host;
  readonly #onResize = () => this.#host.requestUpdate();

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('resize', this.#onResize);
  }

  hostDisconnected(): void {
    removeEventListener('resize', this.#onResize);
  }

  get seen(): SeenWall {
    // Read where they were set: a computed style would have all that is changed styled first.
    const { style } = document.documentElement;
    const numberOf = (name: string) => Number.parseFloat(style.getPropertyValue(name));
    return {
      widthPx: innerWidth,
      heightPx: innerHeight,
      arcminPx: numberOf('--arcmin') || 1,
      touchPx: numberOf('--touch') || 60,
    };
  }
}
