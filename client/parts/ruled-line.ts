import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import { ruledMinutes } from '../../shared/view/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';
import { styled } from './styled.ts';

const percent = (share: number) => `${(share * 100).toFixed(2)}%`;

/**
 * A task's minutes as a ruled line: hatched where gone, a tick for each one ahead, brick where now
 * is.
 */
@customElement('ruled-line')
export class RuledLine extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        position: relative;
        height: calc(14px * var(--arcmin));
      }
      i {
        position: absolute;
        bottom: 0;
      }
      .gone {
        left: 0;
        height: 100%;
        background: var(--hatch);
      }
      .tick {
        width: var(--line);
        height: 70%;
        background: var(--ink);
      }
      .now {
        width: calc(5.5px * var(--arcmin));
        margin-left: calc(-2.75px * var(--arcmin));
        height: 190%;
        background: var(--brick);
      }
    `,
  ];

  @property({ type: Number }) startAt: Instant = instant(0);
  @property({ type: Number }) endAt: Instant = instant(0);
  @property({ type: Number }) now: Instant = instant(0);

  protected override draw() {
    const { goneShare, tickShares } = ruledMinutes(this.startAt, this.endAt, this.now);
    const at = (share: number) => styled({ left: percent(share) });
    return html`<i class="gone" ${styled({ width: percent(goneShare) })}></i>
      ${tickShares.map((share) => html`<i class="tick" ${at(share)}></i>`)}
      <i class="now" ${at(goneShare)}></i>`;
  }
}
