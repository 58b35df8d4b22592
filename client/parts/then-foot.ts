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
      .task {
        overflow: hidden;
        text-overflow: ellipsis;
        min-width: 0;
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
          <clock-time .say=${say} .at=${task.startAt}></clock-time> ${textIn(task.title, say)}
        </button>`,
      )}
      ${this.later > 0 ? html`<span>${words.later(this.later)}</span>` : null}`;
  }
}
