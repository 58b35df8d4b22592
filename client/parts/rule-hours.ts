import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PitRule } from '../../shared/view/index.ts';
import { shareOf } from '../../shared/view/index.ts';
import { clockHour } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';
import { styled } from './styled.ts';

/** Every so many hours a rule has a longer stroke, and here its hour. */
const APART = 3;
const MOST_FIGURES = 4;

/** The hours of the rules above it, under their longer strokes. */
@customElement('rule-hours')
export class RuleHours extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        position: relative;
        height: 1.15em;
        margin-left: calc(24px * var(--arcmin));
        font-size: var(--small);
        font-weight: 700;
        color: var(--soft);
        line-height: 1.15;
      }
      span {
        position: absolute;
        white-space: nowrap;
        transform: translateX(-50%);
      }
      .first {
        transform: none;
      }
      .last {
        transform: translateX(-100%);
      }
    `,
  ];

  @property({ attribute: false }) rule: PitRule | null = null;

  protected override draw() {
    const { rule, say } = this;
    if (!rule) return nothing;
    // A wall's smoker is five figures wide; where there would be more, every other is left out.
    const apart = rule.hours.length > MOST_FIGURES * APART ? 2 * APART : APART;
    const shown = rule.hours.filter((_, i) => i % apart === 0);
    return shown.map((hour, i) => {
      const before = shown[i - 1];
      const share = shareOf(rule, hour);
      const end = share === 0 ? 'first' : share > 0.95 ? 'last' : '';
      const [figure, half] = clockHour(hour, say).split(' ');
      // The half of the day is said where it begins.
      const isSaid = before !== undefined && clockHour(before, say).split(' ')[1] === half;
      return html`<span class=${end} ${styled({ left: `${(share * 100).toFixed(2)}%` })}>
        ${half && !isSaid ? `${figure} ${half}` : figure}
      </span>`;
    });
  }
}
