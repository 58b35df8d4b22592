import type { ReactiveController, ReactiveControllerHost } from 'lit';

type Host = ReactiveControllerHost &
  Element & { readonly renderRoot: HTMLElement | DocumentFragment };

/** Boxes of its own, or in a part of it; keys look after themselves. */
const PLACES = 'button, choice-strip, digit-keys';

/**
 * Where what had the keyboard is drawn no more, what stands in its place has it: the same row of
 * `rows`, or the next. Of an answer that is asked for it is the one that leaves things be, so that
 * a key which is pressed twice does nothing.
 */
export class KeepsFocus implements ReactiveController {
  readonly #host: Host;
  readonly #rows: string;
  /** What has the keyboard, of all that is in it. */
  #on: Element | null = null;
  /** In which row that is. */
  #row = 0;

  constructor(host: Host, rows = '') {
    this.#host = host;
    this.#rows = rows;
    host.addController(this);
    host.addEventListener('focusin', (event) => {
      this.#on = event.composedPath()[0] as Element;
    });
    host.addEventListener('focusout', () => {
      this.#on = null;
    });
  }

  hostUpdate(): void {
    const on = this.#on && within(this.#on, this.#host.shadowRoot);
    if (on)
      this.#row = Math.max(
        0,
        this.#inRows().findIndex((row) => row.contains(on)),
      );
  }

  hostUpdated(): void {
    const root = this.#host.shadowRoot;
    if (!this.#on || this.#on.isConnected || !root) return;
    this.#on = null;
    const rows = this.#inRows();
    const place = (rows[Math.min(this.#row, rows.length - 1)] ?? root).querySelector(PLACES);
    if (place) void focusOn(place as Host & HTMLElement);
  }

  #inRows(): Element[] {
    return this.#rows === '' ? [] : [...this.#host.renderRoot.querySelectorAll(this.#rows)];
  }
}

/** Itself, or the part that it is in, as that root has it. */
function within(element: Element, root: ShadowRoot | null): Element | null {
  const its = element.getRootNode();
  if (its === root) return element;
  return its instanceof ShadowRoot ? within(its.host, root) : null;
}

async function focusOn(place: Host & HTMLElement): Promise<void> {
  if (place.localName === 'digit-keys') return;
  if (place.localName === 'button') return place.focus();
  await place.updateComplete;
  const { renderRoot } = place;
  const box =
    renderRoot.querySelector<HTMLElement>('.leaves') ?? renderRoot.querySelector('button');
  box?.focus();
}
