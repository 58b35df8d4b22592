import type { PropertyValues } from 'lit';
import { css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Mark } from '../../shared/view/index.ts';
import { base } from '../theme/index.ts';
import { inkFirst } from './ink.ts';
import { Part } from './part.ts';
import { styled } from './styled.ts';

/**
 * Thin: may start. Heavy: running. Dashed: tapped, on its way to this device's disk. Hollow: kept
 * here, the hub has not answered. Filled: the hub has it.
 */
export type Ring = 'thin' | 'heavy' | 'tapped' | 'hollow' | 'filled';

/** How far the last tap has come, drawn; `kept`: as what the hub has of it is drawn. */
export function ringOf(mark: Mark | null, kept: Ring): Ring {
  if (mark === null) return kept;
  return mark === 'here' ? 'hollow' : 'tapped';
}

/** Two taps of one wet finger come closer together than this; the second is not meant. */
const TWICE_MS = 700;

/**
 * The place to tap: the whole right edge of a line, with a ring drawn in it. Tells `tap`, and draws
 * that at once, before the line that it stands in has worked out what becomes of it.
 */
@customElement('tap-ring')
export class TapRing extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        container-type: size;
      }
      button {
        width: 100%;
        height: 100%;
        display: flex;
        flex-direction: column;
        align-items: center;
        justify-content: center;
        gap: 2cqh;
        font-size: min(var(--word, var(--strong)), 96cqw / (var(--letters, 5) * 0.64));
        font-weight: 800;
        line-height: 1;
        text-align: center;
      }
      .ring {
        position: relative;
        height: min(52cqh, calc(78px * var(--arcmin)));
        flex: none;
        aspect-ratio: 1;
      }
      svg {
        position: absolute;
        inset: 0;
        fill: none;
        stroke: var(--ink);
      }
      /* Both are on the glass: at a tap nothing is drawn, one is seen for the other. */
      .is,
      .ink {
        will-change: opacity;
      }
      .ink,
      :host([inked]) .is {
        opacity: 0;
      }
      :host([inked]) .ink {
        opacity: 1;
      }
      small {
        font-size: var(--small);
        font-weight: 700;
        line-height: 1.1;
      }
    `,
  ];

  @property() ring: Ring = 'thin';
  /** The one word under the ring. */
  @property() word = '';
  /** A small second line, such as when it was started. */
  @property() under = '';
  /** What a screen reader says of the whole place. */
  @property() name = '';
  #tappedAtMs = Number.NEGATIVE_INFINITY;
  #drying: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#drying);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('ring') || changed.has('word')) this.removeAttribute('inked');
  }

  protected override draw() {
    const letters = styled({ '--letters': String(Math.max(5, this.word.length)) });
    return html`<button aria-label=${this.name} @click=${this.#tap} ${letters}>
      <span class="ring" aria-hidden="true">
        <svg class="is" viewBox="0 0 100 100">${drawing(this.ring)}</svg>
        <svg class="ink" viewBox="0 0 100 100">${drawing('tapped')}</svg>
      </span>
      <span>${this.word}</span>
      ${this.under ? html`<small>${this.under}</small>` : null}
    </button>`;
  }

  #tap(event: Event): void {
    const isTwice = event.timeStamp - this.#tappedAtMs < TWICE_MS;
    this.#tappedAtMs = event.timeStamp;
    if (isTwice) return;
    this.#ink();
    this.tell('tap', null);
  }

  /** Until its line has said what came of it. */
  #ink(): void {
    this.setAttribute('inked', '');
    inkFirst();
    clearTimeout(this.#drying);
    // A tap that comes to nothing leaves no ink.
    this.#drying = setTimeout(() => {
      this.removeAttribute('inked');
    }, TWICE_MS);
  }
}

/**
 * Of a circle and one in it: radii, stroke, dash, what the outer one is filled with. All rings are
 * the same two circles, so that a tap changes strokes on the glass and lays out nothing.
 */
const DRAWINGS = {
  thin: [45, 0, 4, 'none', 'none'],
  heavy: [43, 0, 11, 'none', 'none'],
  tapped: [48, 36, 3, '9 7', 'none'],
  hollow: [48, 36, 3, 'none', 'none'],
  filled: [48, 0, 0, 'none', 'var(--ink)'],
} as const satisfies Record<Ring, readonly [number, number, number, string, string]>;

function drawing(ring: Ring) {
  const [outer, inner, stroke, dash, fill] = DRAWINGS[ring];
  return svg`<g stroke-width=${stroke} stroke-dasharray=${dash} fill=${fill}>
    <circle cx="50" cy="50" r=${outer} /><circle cx="50" cy="50" r=${inner} />
  </g>`;
}
