import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { TaskView } from '../../shared/view/index.ts';
import { textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './clock-time.ts';
import { Part } from './part.ts';

/**
 * The thin list at the foot: what comes then, and how much more after it. A tap brings one up
 * (`pick`).
 */
@customElement('then-foot')
export class ThenFoot extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        align-items: center;
        gap: calc(30px * var(--arcmin));
        padding: 0 var(--edge);
        font-size: var(--small);
        color: var(--soft);
        white-space: nowrap;
        overflow: hidden;
      }
      b {
        font-weight: 800;
        color: var(--ink);
      }
      /* What it is done to leaves whole, into a line that is not seen, where there is no room. */
      .task {
        display: flex;
        align-items: center;
        gap: 0.3em;
        flex: 0 1 auto;
        min-width: 0;
      }
      .task:has(.thing) {
        flex-shrink: 4;
      }
      .what {
        display: flex;
        flex-wrap: wrap;
        column-gap: 0.3em;
        height: 1.2em;
        line-height: 1.2;
        min-width: 0;
        overflow: hidden;
      }
      .what > * {
        max-width: 100%;
        overflow: hidden;
        text-overflow: ellipsis;
      }
    `,
  ];

  @property({ attribute: false }) tasks: readonly TaskView[] = [];
  @property({ type: Number }) later = 0;

  protected override draw() {
    const { words, say } = this;
    if (this.tasks.length === 0 && this.later === 0) return null;
    return html`<b>${words.thenBand}</b>
      ${this.tasks.map(
        (task) => html`<button class="task" @click=${() => this.tell('pick', task.id)}>
          <clock-time .say=${say} .at=${task.startAt}></clock-time>
          <span class="what">
            <span>${textIn(task.title, say)}</span>
            ${task.thing ? html`<span class="thing">· ${textIn(task.thing, say)}</span>` : null}
          </span>
        </button>`,
      )}
      ${this.later > 0 ? html`<span>${words.later(this.later)}</span>` : null}`;
  }
}
