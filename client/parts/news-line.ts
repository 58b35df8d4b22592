import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { NewsLine } from '../../shared/view/index.ts';
import { sayNews } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './choice-strip.ts';
import { Part } from './part.ts';

/** The last decision and what it moved, in one line with its way back. Tells `back`. */
@customElement('news-line')
export class NewsLinePart extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: var(--gap);
        padding: 0 var(--edge);
        font-size: var(--small);
        font-weight: 700;
        line-height: 1.2;
        border-bottom: var(--line) solid var(--ink);
      }
      :host([hidden]) {
        display: none;
      }
      p {
        flex: 1;
        /* A line too long breaks in its middle: a lone figure on the second says nothing. */
        text-wrap: balance;
      }
    `,
  ];

  @property({ attribute: false }) news: NewsLine | null = null;

  protected override willUpdate(): void {
    this.hidden = this.news === null;
  }

  protected override draw() {
    const { news, say, words } = this;
    if (!news) return nothing;
    const name = words.takeBack;
    const back = { label: name, choose: () => this.tell('back', news.command) };
    return html`<p role="status">${sayNews(news, say)}</p>
      ${
        news.canBeUndone
          ? html`<choice-strip .say=${say} .name=${name} .choices=${[back]}></choice-strip>`
          : nothing
      }`;
  }
}
