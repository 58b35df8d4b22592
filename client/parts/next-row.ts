import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import type { Person, TaskView } from '../../shared/view/index.ts';
import { pressesNow } from '../../shared/view/index.ts';
import { amountOf, sayNextWhy, textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { isOtherMinute } from './clock-time.ts';
import { Part } from './part.ts';

/**
 * One row under *Next*: when it can start, what, and what it waits for. A tap brings it up to *Now*
 * (`pick`).
 */
@customElement('next-row')
export class NextRow extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      button {
        width: 100%;
        min-height: var(--row-height, var(--touch));
        display: grid;
        grid-template-columns: minmax(calc(204px * var(--arcmin)), max-content) minmax(0, 1fr) auto;
        align-items: center;
        padding-right: var(--edge);
        line-height: 1.1;
      }
      clock-time {
        padding-inline: calc(26px * var(--arcmin)) 0.3em;
        font-weight: 700;
      }
      .what {
        border-top: var(--hair) solid var(--pencil);
        grid-column: 2 / 4;
        align-self: stretch;
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: 1em;
      }
      :host([first]) .what {
        border-top-color: transparent;
      }
      /* What has no room leaves whole, into a line that is not seen: how many before the title. */
      b {
        font-weight: 700;
        /* It gives way before the reason does. */
        flex: 0 1000 auto;
        min-width: 60%;
        display: flex;
        flex-wrap: wrap;
        column-gap: 0.35em;
        height: 1.2em;
        line-height: 1.2;
        overflow: hidden;
      }
      b > * {
        max-width: 100%;
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      .due {
        font-weight: 800;
        text-decoration: underline;
        text-decoration-thickness: var(--heavy);
        text-underline-offset: 0.1em;
      }
      .many {
        font-weight: 600;
        color: var(--soft);
      }
      .why {
        font-size: var(--small);
        color: var(--soft);
        text-align: right;
        flex: 1 1 auto;
        text-wrap: balance;
      }
      :host([narrow]) button {
        grid-template-columns: minmax(calc(166px * var(--arcmin)), max-content) minmax(0, 1fr);
        column-gap: 0.3em;
        padding: calc(6px * var(--arcmin)) var(--edge) calc(6px * var(--arcmin)) 0;
      }
      :host([narrow]) .what {
        grid-column: 2;
        flex-direction: column;
        align-items: flex-start;
        justify-content: center;
        gap: 0;
      }
      :host([narrow]) b,
      :host([narrow]) .why {
        max-width: 100%;
        height: auto;
        flex: none;
        text-align: left;
      }
      :host([narrow]) b > * {
        white-space: normal;
      }
      /* In letters as large as that, the time stands over the words. */
      @container (max-width: 12em) {
        :host([narrow]) button {
          grid-template-columns: minmax(0, 1fr);
          padding-left: var(--edge);
        }
        :host([narrow]) .what {
          grid-column: 1;
          border: none;
        }
        :host([narrow]) clock-time {
          padding: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) task: TaskView | null = null;
  @property({ attribute: false }) people: readonly Person[] = [];
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;

  protected override draw() {
    const { task, say } = this;
    if (!task) return null;
    const many = [amountOf(task, say), task.thing && textIn(task.thing, say)];
    return html`<button @click=${() => this.tell('pick', task.id)}>
      <clock-time .say=${say} .at=${task.startAt} .now=${this.now}></clock-time>
      <span class="what">
        <b>
          <span class=${this.now !== null && pressesNow(task, this.now) ? 'due' : ''}
            >${textIn(task.title, say)}</span
          >
          <span class="many">${many.filter(Boolean).join(' · ')}</span>
        </b>
        <span class="why">${sayNextWhy(task, this.people, say)}</span>
      </span>
    </button>`;
  }
}
