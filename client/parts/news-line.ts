import type { PropertyValues } from 'lit';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { NewsLine } from '../../shared/view/index.ts';
import { sayNews, sayNewsInShort } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './choice-strip.ts';
import { Heard } from './heard.ts';
import { Part } from './part.ts';

/** So long the whole of it stands over a wall once it was tapped. */
const WHOLE_MS = 20_000;

/**
 * The last decision and what it moved most, in one line with its way back (`back`); a tap says the
 * rest for a while.
 */
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
        min-width: 0;
        /* However long the line is, it makes no page wider. */
        display: grid;
        grid-template-columns: minmax(0, 1fr);
      }
      p button {
        width: 100%;
        display: flex;
        align-items: center;
        white-space: pre;
      }
      /* What was decided gives way, not what it cost. */
      .told {
        overflow: hidden;
        text-overflow: ellipsis;
      }
      /* A phone has no room for both beside each other. */
      @media (width < 600px) {
        p button {
          flex-wrap: wrap;
          white-space: normal;
        }
        .told {
          max-width: 100%;
        }
      }
      [aria-expanded='true'] {
        white-space: normal;
        /* A line too long breaks in its middle: a lone figure on the second says nothing. */
        text-wrap: balance;
      }
    `,
  ];

  @property({ attribute: false }) news: NewsLine | null = null;

  @state() private isWhole = false;

  readonly #heard = new Heard(this);
  #closing: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#closing);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    this.hidden = this.news === null;
    const before: NewsLine | null | undefined = changed.get('news');
    if (before && before.command !== this.news?.command) this.isWhole = false;
  }

  protected override draw() {
    const { news, say, words } = this;
    const heard = html`<span class="unseen" role="status">
      ${this.#heard.of(news ? sayNews(news, say) : '')}
    </span>`;
    if (!news) return heard;
    const back = { label: words.undo, choose: () => this.tell('back', news.command) };
    const { isWhole } = this;
    const [told, moved] = isWhole ? [sayNews(news, say), ''] : sayNewsInShort(news, say);
    return html`${heard}
      <p>
        <button aria-expanded=${isWhole} @click=${() => this.#show(!isWhole)}>
          <span class="told">${told}</span><span>${moved}</span>
        </button>
      </p>
      ${
        news.canBeUndone
          ? html`<choice-strip .say=${say} .name=${told} .choices=${[back]}></choice-strip>`
          : nothing
      }`;
  }

  #show(isWhole: boolean): void {
    this.isWhole = isWhole;
    clearTimeout(this.#closing);
    if (isWhole) this.#closing = setTimeout(() => this.#show(false), WHOLE_MS);
  }
}
