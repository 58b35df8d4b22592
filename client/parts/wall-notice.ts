import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CommandId, Instant } from '../../shared/kernel/index.ts';
import type { ReadOnly } from '../../shared/protocol/index.ts';
import type { ClosedDay, Refusal } from '../../shared/view/index.ts';
import { clockTime, sayRefusal, sayWhen } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './choice-strip.ts';
import { Heard } from './heard.ts';
import { Part } from './part.ts';
import { seenChoices } from './seen-choices.ts';

/** A refused tap whose line is not on the page. */
export type StrayRefusal = {
  readonly id: CommandId;
  readonly title: string;
  readonly refusal: Refusal;
  /** How many refusals nobody has read yet, this one among them. */
  readonly unread: number;
};

/**
 * What a wall has to say of itself: since when it is alone and what it keeps, that nothing can be
 * kept, that the day is closed, or a refusal whose line is gone. Ink turned round, as on the back
 * of the paper; gone when there is nothing to say.
 */
@customElement('wall-notice')
export class WallNotice extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        position: relative;
        font-size: var(--small);
        font-weight: 700;
        line-height: 1.25;
      }
      p {
        background: var(--ink);
        color: var(--ground);
        padding: 0.25em var(--edge);
      }
      .stray {
        background: none;
        color: var(--ink);
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: var(--gap);
        border-bottom: var(--line) solid var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) aloneSince: Instant | null = null;
  /** By the hub's clock; what was on another day is said with that. */
  @property({ type: Number }) now: Instant | null = null;
  @property({ type: Number }) kept = 0;
  @property({ type: Boolean }) failing = false;
  @property({ attribute: false }) readOnly: ReadOnly | null = null;
  @property({ attribute: false }) closed: ClosedDay | null = null;
  @property({ attribute: false }) stray: StrayRefusal | null = null;
  /** For those who hear the wall: what its lines have just said. */
  @property() said = '';

  readonly #heard = new Heard(this);

  protected override draw() {
    const { words, say, aloneSince, readOnly, closed, stray } = this;
    const sentences = [
      closed && words.dayClosed(clockTime(closed.at, say), closed.by),
      aloneSince !== null && words.aloneSince(sayWhen(aloneSince, this.now ?? aloneSince, say)),
      aloneSince !== null && this.kept > 0 && words.keptHere(this.kept),
      this.failing && words.notKept,
      readOnly && sayRefusal({ rule: 'read-only', atSeq: readOnly.atSeq }, say),
    ].filter(Boolean);
    const heard = [...sentences, this.said].filter(Boolean).join(' ');
    return html`${sentences.length > 0 ? html`<p>${sentences.join(' ')}</p>` : nothing}
      <span class="unseen" role="status">${this.#heard.of(heard)}</span>
      ${stray ? this.#stray(stray) : nothing}`;
  }

  #stray(stray: StrayRefusal) {
    const { words, say } = this;
    const { title, refusal } = stray;
    const choices = seenChoices(stray, words, (name, id) => this.tell(name, id));
    return html`<p class="stray">
      <span>${words.refusedTap(title, sayRefusal(refusal, say))}</span>
      <choice-strip .say=${say} .name=${words.seen} .choices=${choices}></choice-strip>
    </p>`;
  }
}
