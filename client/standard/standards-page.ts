import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { StandardsShown } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { standardWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { SeenSize } from '../shell/seen-size.ts';
import { base } from '../theme/index.ts';
import './cut-standard.ts';
import { readStandards } from './standards.ts';

const NARROW_PX = 700;

/** Every cut's standard, one to a sheet, to be read at a desk or printed and pinned up. */
@customElement('standards-page')
export class StandardsPage extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
      }
      h1 {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: center;
        gap: var(--gap);
        padding: var(--gap) var(--edge);
        font-size: var(--figure);
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
      }
      button {
        min-height: var(--touch);
        padding: 0 1em;
        border: var(--line) solid var(--ink);
        font-size: var(--body);
      }
      cut-standard {
        border-bottom: var(--line) solid var(--ink);
        max-width: 80em;
      }
      .away {
        padding: var(--edge);
      }
      @media print {
        h1 {
          display: none;
        }
        cut-standard {
          break-after: page;
          break-inside: avoid;
          border: none;
        }
        cut-standard:last-of-type {
          break-after: auto;
        }
      }
    `,
  ];

  @property() language: Language = 'en';
  /** One cut alone; null: all that have a standard. */
  @property({ attribute: false }) only: string | null = null;
  @state() private shown: StandardsShown | 'looking' | null = 'looking';

  readonly #size = new SeenSize(this);

  override connectedCallback(): void {
    super.connectedCallback();
    this.say = { ...this.say, language: this.language };
    void this.#load();
  }

  protected override draw() {
    const { shown, say } = this;
    const said = standardWords[say.language];
    return html`<h1>
        ${said.standards} <button @click=${() => print()}>${said.print}</button>
      </h1>
      ${shown === null ? html`<p class="away" role="status">${said.away}</p>` : nothing}
      <main>${shown && shown !== 'looking' ? this.#sheets(shown) : nothing}</main>`;
  }

  #sheets({ cuts }: StandardsShown) {
    const { only } = this;
    const wanted = cuts.filter(({ cut, off }) => (only === null ? off.length > 0 : cut === only));
    const narrow = this.#size.seen.widthPx < NARROW_PX;
    return wanted.map(
      (standard) => html`<cut-standard
        .say=${this.say}
        .standard=${standard}
        ?narrow=${narrow}
      ></cut-standard>`,
    );
  }

  async #load(): Promise<void> {
    const shown = await readStandards();
    this.shown = shown;
    if (shown) this.say = { ...this.say, zone: shown.zone, ...shown.units };
  }
}
