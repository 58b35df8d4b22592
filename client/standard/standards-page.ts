import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { CutStandard, StandardsShown } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { standardWords, textIn } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { Spoken } from '../shell/spoken.ts';
import { base } from '../theme/index.ts';
import './cut-standard.ts';
import { readStandards } from './standards.ts';

/** Every cut's standard, one to a sheet, to be read at a desk or printed and pinned up. */
@customElement('standards-page')
export class StandardsPage extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
      }
      header,
      nav {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap);
        padding: var(--gap) var(--edge);
      }
      nav {
        row-gap: 0;
      }
      header {
        border-bottom: var(--heavy) solid var(--ink);
      }
      h1 {
        flex: 1 1 8em;
        font-size: var(--figure);
        font-weight: 800;
        line-height: 1.1;
      }
      nav,
      .up {
        border-bottom: var(--line) solid var(--ink);
      }
      .up {
        padding: 0 var(--edge);
      }
      a,
      button {
        display: inline-flex;
        align-items: center;
        min-height: var(--touch);
        color: var(--ink);
        font-weight: 700;
      }
      nav a {
        margin-right: 1em;
      }
      nav a,
      .up a {
        min-height: 2.2em;
      }
      button,
      .box {
        padding: 0 0.6em;
        border: var(--line) solid var(--ink);
        text-decoration: none;
      }
      .away {
        padding: var(--edge);
      }
      @media print {
        header,
        nav,
        .up {
          display: none;
        }
        cut-standard {
          break-after: page;
          break-inside: avoid;
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

  readonly #spoken = new Spoken(this);

  override connectedCallback(): void {
    super.connectedCallback();
    this.say = { ...this.say, language: this.language };
    void this.#load();
  }

  protected override draw() {
    const { shown, say } = this;
    const said = standardWords[say.language];
    const { cuts = [] } = shown && shown !== 'looking' ? shown : {};
    const wanted = cuts.filter(({ cut, off }) =>
      this.only === null ? off.length > 0 : cut === this.only,
    );
    return html`<header>
        <h1 tabindex="-1">${said.standards}</h1>
        <choice-strip
          .say=${say}
          .name=${this.#spoken.name}
          .choices=${this.#spoken.choices}
        ></choice-strip>
        <button @click=${() => print()}>${said.print}</button>
        <a class="box" href="/">${said.screens}</a>
      </header>
      ${shown === null ? html`<p class="away" role="status">${said.away}</p>` : nothing}
      ${wanted.length > 1 ? this.#list(wanted) : nothing}
      <main>${wanted.map((standard) => this.#sheet(standard, wanted.length > 1))}</main>`;
  }

  #list(cuts: readonly CutStandard[]) {
    return html`<nav>
      ${cuts.map(
        ({ cut, name }) => html`<a href=${`#${cut}`} @click=${this.#show}>
          ${textIn(name, this.say)}
        </a>`,
      )}
    </nav>`;
  }

  #sheet(standard: CutStandard, isOneOfMany: boolean) {
    const { allCuts } = standardWords[this.say.language];
    return html`<cut-standard
        id=${standard.cut}
        .say=${this.say}
        .standard=${standard}
      ></cut-standard>
      ${
        isOneOfMany
          ? html`<p class="up"><a href="#" @click=${this.#show}>${allCuts}</a></p>`
          : nothing
      }`;
  }

  /** The browser finds no place by its name in a part, and takes no keyboard there. */
  readonly #show = (event: Event): void => {
    event.preventDefault();
    const { hash = '' } = event.currentTarget as HTMLAnchorElement;
    history.replaceState(null, '', hash || location.pathname + location.search);
    const { renderRoot } = this;
    const cut = hash.slice(1);
    const at = cut === '' ? this : (renderRoot as ShadowRoot).getElementById(cut);
    at?.scrollIntoView();
    const heading = at?.shadowRoot?.querySelector<HTMLElement>('h1, h2');
    heading?.focus({ preventScroll: true });
  };

  async #load(): Promise<void> {
    const shown = await readStandards();
    this.shown = shown;
    if (shown) this.say = { ...this.say, zone: shown.zone, ...shown.units };
  }
}
