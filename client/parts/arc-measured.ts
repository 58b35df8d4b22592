import type { ReactiveController, ReactiveControllerHost } from 'lit';

type Host = ReactiveControllerHost & HTMLElement;

/** Is told how large its part is to the reader's eye, at first and whenever that changes. */
export abstract class ArcMeasured implements ReactiveController {
  protected readonly host: Host;
  readonly #observer = new ResizeObserver(() => this.#measure());

  constructor(host: Host) {
    this.host = host;
    host.addController(this);
  }

  /** In minutes of arc. */
  protected abstract measured(wide: number, high: number): void;

  hostConnected(): void {
    this.#observer.observe(this.host);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
  }

  #measure(): void {
    const { offsetWidth, offsetHeight } = this.host;
    const arcmin = Number.parseFloat(getComputedStyle(this.host).getPropertyValue('--arcmin'));
    this.measured(offsetWidth / arcmin, offsetHeight / arcmin);
  }
}
