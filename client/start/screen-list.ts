import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Text } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { standardWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

type Listed = { readonly path: string; readonly name: Text };

const TRY_AGAIN_MS = 3000;

/** The faces of this kitchen as plain big links. `only="stations"` leaves out the others. */
@customElement('screen-list')
export class ScreenList extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: var(--edge);
      }
      h1 {
        font-size: var(--strong);
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
      }
      a {
        display: flex;
        align-items: center;
        min-height: max(var(--touch), 2em);
        font-size: var(--figure);
        font-weight: 800;
        overflow-wrap: anywhere;
        color: var(--ink);
        text-decoration: none;
        border-bottom: var(--hair) solid var(--pencil);
      }
      a:active {
        background: var(--light-hatch);
      }
    `,
  ];

  @property() only = '';
  @property() language: Language = document.documentElement.lang === 'es' ? 'es' : 'en';
  @state() private listed: readonly Listed[] | null = null;

  #again: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.say = { ...this.say, language: this.language };
    void this.#load();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#again);
  }

  protected override draw() {
    const { words } = this;
    const isForStations = this.only === 'stations';
    const shown = this.listed?.filter(({ path }) => !isForStations || path.includes('station='));
    return html`<h1>${isForStations ? words.whichStation : words.whichScreen}</h1>
      ${shown ? nothing : html`<p role="status">${words.looking}</p>`}
      <nav>
        <ul>
          ${shown?.map(
            ({ path, name }) => html`<li><a href=${path}>${textIn(name, this.say)}</a></li>`,
          )}
          ${isForStations ? nothing : this.#standards()}
        </ul>
      </nav>`;
  }

  /** No screen of the day, but where whoever is new begins. */
  #standards() {
    const { standards } = standardWords[this.say.language];
    return html`<li><a href="/standards.html">${standards}</a></li>`;
  }

  async #load(): Promise<void> {
    try {
      const answer = await fetch('/screens.json');
      this.listed = (await answer.json()) as Listed[];
    } catch {
      this.#again = setTimeout(() => this.#load(), TRY_AGAIN_MS);
    }
  }
}
