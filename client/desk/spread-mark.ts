import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SpreadView } from '../../shared/view/index.ts';
import { Part } from '../parts/part.ts';
import { styled } from '../parts/styled.ts';
import { base } from '../theme/index.ts';

/**
 * What a service may have in hand by how its cooks come out, drawn beside the words for it: hatched
 * over eight of ten cases, heavy in their middle, on a rule whose tall stroke is the opening; left
 * of that it is late.
 */
@customElement('spread-mark')
export class SpreadMark extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
      }
      div {
        position: relative;
        width: 8em;
        height: 0.9em;
        border-bottom: var(--line) solid var(--ink);
      }
      i {
        position: absolute;
        bottom: 0;
        height: 60%;
      }
      .range {
        background: var(--hatch);
      }
      .mid,
      .due {
        margin-left: calc(var(--line) / -2);
        width: var(--heavy);
        background: var(--ink);
      }
      .due {
        width: var(--line);
        height: 100%;
      }
    `,
  ];

  @property({ attribute: false }) spread: SpreadView | null = null;

  protected override draw() {
    if (!this.spread) return nothing;
    const { low, likely, high, due } = this.spread.mark;
    const share = (of: number) => `${(100 * of).toFixed(1)}%`;
    return html`<div aria-hidden="true">
      <i class="range" ${styled({ left: share(low), width: share(high - low) })}></i>
      <i class="mid" ${styled({ left: share(likely) })}></i>
      <i class="due" ${styled({ left: share(due) })}></i>
    </div>`;
  }
}
