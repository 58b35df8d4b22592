import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { startWords } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import type { Settings } from '../shell/settings.ts';
import { Spoken } from '../shell/spoken.ts';
import type { WhoDoors } from '../shell/who-doors.ts';
import { base, pageHead } from '../theme/index.ts';
import './screen-list.ts';
import './screen-settings.ts';

/** Somebody who came by mistake, and went: the wall is wanted where it hangs. */
const LEFT_MS = 180_000;

/** Where a screen is put up: its language, what it shows, and how it hangs. */
@customElement('start-page')
export class StartPage extends Part {
  static override styles = [
    base,
    pageHead,
    css`
      :host {
        display: block;
        padding: var(--gap) var(--edge) var(--edge);
        line-height: 1.25;
      }
      h1 {
        font-size: var(--figure);
        font-weight: 800;
        line-height: 1.1;
      }
      .back {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 1em;
        padding: var(--gap) 0;
        border-bottom: var(--hair) solid var(--pencil);
      }
      .back a {
        display: flex;
        align-items: center;
        min-height: var(--touch);
        padding: 0 0.6em;
        border: var(--heavy) solid var(--ink);
        color: var(--ink);
        font-weight: 800;
        text-decoration: none;
      }
      h2 {
        font-weight: 700;
        padding: var(--gap) 0;
        border-bottom: var(--line) solid var(--ink);
      }
      main {
        display: grid;
        gap: 0 calc(2 * var(--edge));
      }
      @media (width >= 84em) {
        main {
          grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr);
        }
      }
    `,
  ];

  @property({ attribute: false }) settings: Settings | null = null;
  @property({ attribute: false }) doors: Pick<WhoDoors, 'list'> | null = null;
  /** The wall that somebody came from. */
  @property({ attribute: false }) from: string | null = null;
  @property({ attribute: false }) go = (path: string): void => location.replace(path);

  readonly #spoken = new Spoken(this);
  #left: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.say = { ...this.say, language: this.settings?.language ?? 'en' };
    for (const touch of ['pointerdown', 'keydown'] as const) addEventListener(touch, this.#touched);
    this.#touched();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const touch of ['pointerdown', 'keydown'] as const) {
      removeEventListener(touch, this.#touched);
    }
    clearTimeout(this.#left);
  }

  protected override draw() {
    const { say, settings, from } = this;
    const said = startWords[say.language];
    return html`<header>
        <h1>${said.whichScreen}</h1>
        <choice-strip
          .say=${say}
          .name=${this.#spoken.name}
          .choices=${this.#spoken.choices}
        ></choice-strip>
      </header>
      ${
        from === null
          ? nothing
          : html`<p class="back">
              <a href=${from}>${said.goBack}</a><span>${said.goesBack}</span>
            </p>`
      }
      <main>
        <div>
          <h2>${said.tapOne}</h2>
          <screen-list .say=${say} .doors=${this.doors}></screen-list>
        </div>
        <div>
          <h2>${said.asItHangs}</h2>
          <screen-settings .say=${say} .settings=${settings}></screen-settings>
        </div>
      </main>`;
  }

  readonly #touched = (): void => {
    clearTimeout(this.#left);
    const { from } = this;
    if (from !== null) this.#left = setTimeout(() => this.go(from), LEFT_MS);
  };
}
