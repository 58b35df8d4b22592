import type { CSSResultGroup } from 'lit';
import { html, LitElement, render } from 'lit';
import { property } from 'lit/decorators.js';
import type { Intent } from '../../shared/view/index.ts';
import type { Interface, Say } from '../../shared/words/index.ts';
import { ui } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { afterInk } from './ink.ts';

/**
 * What every part of a screen has: how its reader wants things said, and the promise that a part
 * which cannot be drawn says so in its own place and leaves the rest of the screen alone.
 */
export abstract class Part extends LitElement {
  static override styles: CSSResultGroup = base;

  /** Whose language, clock and units. */
  @property({ attribute: false }) say: Say = {
    language: 'en',
    zone: 'UTC',
    clock: '24 h',
    temperature: '°C',
    weight: 'kg',
  };

  protected get words(): Interface {
    return ui[this.say.language];
  }

  /** What `render` is to other elements. */
  protected abstract draw(): unknown;

  protected override render(): unknown {
    try {
      return this.draw();
    } catch (fault) {
      return this.#broken(fault);
    }
  }

  /** A fault may come before a part is drawn, or after: what stood there is old by then. */
  protected override performUpdate(): void {
    try {
      super.performUpdate();
    } catch (fault) {
      render(this.#broken(fault), this.renderRoot, this.renderOptions);
    }
  }

  #broken(fault: unknown) {
    reportError(new Error(`${this.localName} cannot be drawn`, { cause: fault }));
    return html`<p role="status">${this.words.broken}</p>`;
  }

  /** Asks the screen to have something done, when whoever tapped has seen that they did. */
  protected ask(intent: Intent): void {
    afterInk(() => this.tell('ask', intent));
  }

  protected tell<Detail>(name: string, detail: Detail): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}
