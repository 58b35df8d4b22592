import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import type { TaskView } from '../../shared/view/index.ts';
import { pressesNow } from '../../shared/view/index.ts';
import { sayDayAhead, textIn } from '../../shared/words/index.ts';
import { base, CAP_HEIGHT, LETTERS_ARCMIN } from '../theme/index.ts';
import { isOtherMinute } from './clock-time.ts';
import { onceAFrame } from './ink.ts';
import { Part } from './part.ts';

/** In letters: the band's name, the count of the rest and the edges; a title's time and its gap. */
const BESIDE = 22;
const ROUND_TITLE = 11;
const DAY = 4;

const isOther = (tasks: readonly TaskView[], before: readonly TaskView[] | undefined) =>
  tasks.length !== before?.length || tasks.some((task, i) => task !== before[i]);

/** Of a letter's height: its width where a language has many wide ones. */
const LETTER = 0.59;

const roomIn = (widthPx: number, lettersPx: number) => widthPx / (LETTER * lettersPx) - BESIDE;

/** How large small letters are; read where it was set, since nothing is laid out yet. */
function smallPx(): number {
  const { style } = document.documentElement;
  const arcminPx = Number.parseFloat(style.getPropertyValue('--arcmin')) || 1;
  return (LETTERS_ARCMIN.small / CAP_HEIGHT) * arcminPx;
}

const sum = (lengths: readonly number[]) => lengths.reduce((all, each) => all + each, 0);

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
        container-type: inline-size;
        display: flex;
        align-items: center;
        gap: calc(30px * var(--arcmin));
        padding: 0 var(--edge);
        font-size: var(--small);
        color: var(--soft);
        white-space: nowrap;
        overflow: hidden;
      }
      /* In letters so large that little more than a title has room on a line. */
      @media (width < 16em) {
        :host {
          flex-wrap: wrap;
        }
      }
      b,
      .due {
        font-weight: 800;
        color: var(--ink);
      }
      .due .what {
        text-decoration: underline;
        text-decoration-thickness: var(--heavy);
        text-underline-offset: 0.1em;
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
      /* A page so narrow may be longer than the glass: a title takes two lines. */
      @container (max-width: 25em) {
        .task {
          flex-wrap: wrap;
        }
        .what {
          height: auto;
          white-space: normal;
        }
      }
    `,
  ];

  @property({ attribute: false, hasChanged: isOther }) tasks: readonly TaskView[] = [];
  @property({ type: Number }) later = 0;
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant | null = null;

  /**
   * How many letters it has room for: as wide as the wall, until it is laid out, and then measured
   * when its size changes, not whenever it is drawn.
   */
  @state() private letters = roomIn(innerWidth, smallPx());
  readonly #observer = new ResizeObserver(onceAFrame(() => this.#measure()));

  override connectedCallback(): void {
    super.connectedCallback();
    this.#observer.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer.disconnect();
  }

  protected override draw() {
    const { words, say } = this;
    if (this.tasks.length === 0 && this.later === 0) return null;
    const shown = this.tasks.slice(0, this.#roomFor(this.tasks));
    const later = this.later + this.tasks.length - shown.length;
    return html`<b>${words.thenBand}</b>
      ${shown.map(
        (
          task,
        ) => html`<button class=${this.#classOf(task)} @click=${() => this.tell('pick', task.id)}>
          <clock-time .say=${say} .at=${task.startAt} .now=${this.now}></clock-time>
          <span class="what">
            <span>${textIn(task.title, say)}</span>
            ${task.thing ? html`<span class="thing">· ${textIn(task.thing, say)}</span>` : null}
          </span>
        </button>`,
      )}
      ${later > 0 ? html`<span>${words.later(later)}</span>` : null}`;
  }

  #classOf(task: TaskView): string {
    return this.now !== null && pressesNow(task, this.now) ? 'task due' : 'task';
  }

  /** How many have room with their whole titles; the rest is counted. */
  #roomFor(tasks: readonly TaskView[]): number {
    const { say, now } = this;
    const used = tasks.map(({ title, startAt }) => {
      const isOfDay = now !== null && sayDayAhead(startAt, now, say) !== '';
      return textIn(title, say).length + ROUND_TITLE + (isOfDay ? DAY : 0);
    });
    const fits = used.filter((_, i) => sum(used.slice(0, i + 1)) <= this.letters);
    return Math.max(1, fits.length);
  }

  #measure(): void {
    const lettersPx = Number.parseFloat(getComputedStyle(this).fontSize);
    this.letters = roomIn(this.offsetWidth, lettersPx);
  }
}
