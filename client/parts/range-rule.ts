import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { PitRule } from '../../shared/view/index.ts';
import { shareOf } from '../../shared/view/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';
import { styled } from './styled.ts';

export type DrawnRange = {
  readonly lowAt: Instant;
  readonly at: Instant;
  readonly highAt: Instant;
};

/**
 * Hours under a rack: brick where now is, hatched from P10 to P90 of what comes next, heavy at P50.
 */
@customElement('range-rule')
export class RangeRule extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        position: relative;
        height: calc(13px * var(--arcmin));
      }
      i {
        position: absolute;
        top: 0;
      }
      .hour {
        width: var(--line);
        height: 42%;
        margin-left: calc(var(--line) / -2);
        background: var(--ink);
      }
      .long {
        height: 78%;
      }
      .range {
        height: 100%;
        background: var(--hatch);
      }
      .mid,
      .now {
        width: calc(4.5px * var(--arcmin));
        margin-left: calc(-2.25px * var(--arcmin));
        top: -25%;
        height: 140%;
        background: var(--ink);
      }
      .now {
        background: var(--brick);
      }
    `,
  ];

  @property({ attribute: false }) rule: PitRule | null = null;
  @property({ attribute: false }) ranges: readonly DrawnRange[] = [];
  @property({ type: Number }) now: Instant = instant(0);

  protected override draw() {
    const { rule } = this;
    if (!rule) return nothing;
    const left = (at: Instant) => ({ left: `${(shareOf(rule, at) * 100).toFixed(2)}%` });
    const wide = ({ lowAt, highAt }: DrawnRange) => shareOf(rule, highAt) - shareOf(rule, lowAt);
    return html`${rule.hours.map(
      (hour, i) => html`<i class=${i % 3 ? 'hour' : 'hour long'} ${styled(left(hour))}></i>`,
    )}
    ${this.ranges.map((range) => {
      const width = `${(wide(range) * 100).toFixed(2)}%`;
      return html`<i class="range" ${styled({ ...left(range.lowAt), width })}></i>
        <i class="mid" ${styled(left(range.at))}></i>`;
    })}
    <i class="now" ${styled(left(this.now))}></i>`;
  }
}
