import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { ServiceOutlook } from '../../shared/view/index.ts';
import { LANGUAGES, type Language } from '../../shared/words/index.ts';
import { wipeGlass } from '../hands/index.ts';
import { base } from '../theme/index.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import './clock-time.ts';
import { Part } from './part.ts';
import './service-line.ts';

/** Where a screen is chosen one finds back to this one. */
const toOtherScreen = () => location.assign(`/#${location.pathname}${location.search}`);

/** A name longer than this, as of a wall with many stations, is written small. */
const LONG_LETTERS = 34;

/**
 * The head of a wall: what it shows, how the service nearest to its limit stands, and the time. Its
 * name opens boxes under it, and closes them (`toggle`); one asks for the other language
 * (`choose-language`).
 */
@customElement('wall-head')
export class WallHead extends Part {
  static override styles = [
    base,
    css`
      :host {
        /* Whatever is long wraps in its own column: the clock stays where it is looked for. */
        display: grid;
        grid-template-columns: minmax(0, auto) minmax(0, auto) auto;
        align-items: baseline;
        justify-content: space-between;
        column-gap: 0.5em;
        padding: 0 var(--edge);
        border-bottom: var(--heavy) solid var(--ink);
        font-size: var(--body);
        font-weight: 700;
        line-height: 1.2;
      }
      h1 {
        font-size: var(--body);
        font-weight: 800;
      }
      clock-time {
        font-size: var(--strong);
        font-weight: 800;
      }
      .long {
        font-size: var(--small);
        line-height: 1.1;
      }
      :host([narrow]) {
        display: flex;
        flex-wrap: wrap;
      }
      :host([narrow]) :is(service-line, p, choice-strip) {
        flex-basis: 100%;
      }
      :host([narrow]) service-line {
        order: 1;
        padding-bottom: 0.2em;
      }
      :host([narrow]) :is(p, choice-strip) {
        order: 2;
      }
      :host([tight]) service-line {
        font-size: var(--small);
      }
      :host([tight]) clock-time {
        font-size: var(--body);
      }
      p {
        grid-column: 1 / -1;
        font-weight: 800;
      }
      choice-strip {
        grid-column: 1 / -1;
        padding-bottom: var(--gap);
        font-size: var(--small);
      }
    `,
  ];

  @property() name = '';
  @property({ attribute: false }) outlook: ServiceOutlook | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ type: Boolean, reflect: true }) narrow = false;
  @property({ type: Boolean, reflect: true }) tight = false;
  /** Boxes beside those that every wall has; where they answer a question, they stand alone. */
  @property({ attribute: false }) others: readonly Choice[] = [];
  @property() asks = '';
  @property({ type: Boolean }) open = false;

  protected override draw() {
    const { say, words } = this;
    const other = say.language === 'en' ? 'es' : 'en';
    const toggle = () => this.tell('toggle', null);
    const always = [
      { label: words.wipeGlass, choose: () => this.#wipe() },
      { label: LANGUAGES[other], choose: () => this.#speak(other) },
      { label: words.otherScreen, choose: toOtherScreen },
      { label: words.close, choose: toggle, leaves: true },
    ];
    const choices = this.asks === '' ? [...this.others, ...always] : this.others;
    const title = this.name || words.thisScreen;
    const name = this.asks || title;
    return html`<h1 class=${this.name.length > LONG_LETTERS ? 'long' : ''}>
        <button aria-expanded=${this.open} @click=${toggle}>${title}</button>
      </h1>
      <slot
        ><service-line .say=${say} .outlook=${this.outlook} .now=${this.now}></service-line
      ></slot>
      <clock-time .say=${say} .at=${this.now}></clock-time>
      ${
        this.open
          ? html`${this.asks ? html`<p>${this.asks}</p>` : null}
              <choice-strip .say=${say} .name=${name} .choices=${choices}></choice-strip>`
          : null
      }`;
  }

  #speak(language: Language): void {
    this.tell('toggle', null);
    this.tell('choose-language', language);
  }

  #wipe(): void {
    this.tell('toggle', null);
    wipeGlass();
  }
}
