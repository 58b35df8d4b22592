import { css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { encode } from 'uqr';
import { base, grounds } from '../theme/index.ts';
import { Part } from './part.ts';

/** Light around the code, in its own squares (ISO/IEC 18004; the figure from memory). */
const QUIET = 4;

/** An address as a QR code: dark on light on either ground, which every camera reads. */
@customElement('qr-code')
export class QrCode extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
      }
      svg {
        display: block;
        width: 100%;
        height: auto;
      }
    `,
  ];

  @property() text = '';
  /** What it leads to, for those who hear it. */
  @property() name = '';

  protected override draw() {
    // A fifth of it may be wet, torn or in the light of a lamp.
    const { data, size } = encode(this.text, { border: 0, ecc: 'M' });
    const whole = size + 2 * QUIET;
    const squares = data.flatMap((row, y) =>
      row.flatMap((isDark, x) => (isDark ? [`M${x + QUIET} ${y + QUIET}h1v1h-1z`] : [])),
    );
    return html`<svg viewBox="0 0 ${whole} ${whole}" role="img" aria-label=${this.name}>
      ${svg`<rect width=${whole} height=${whole} fill=${grounds.paper.ground} />
      <path d=${squares.join('')} fill=${grounds.paper.ink} shape-rendering="crispEdges" />`}
    </svg>`;
  }
}
