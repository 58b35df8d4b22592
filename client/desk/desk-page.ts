import type { PropertyValues } from 'lit';
import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { DeskView, View } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { deskWords, sayRefusal } from '../../shared/words/index.ts';
import '../parts/alert-line.ts';
import { onceAFrame } from '../parts/ink.ts';
import { Part } from '../parts/part.ts';
import type { AlertWatch } from '../shell/alert-watch.ts';
import { DayController } from '../shell/day-controller.ts';
import { notice } from '../shell/notice.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import { wantsMending } from './desk-head.ts';
import type { Section } from './sections.ts';
import { sections } from './sections.ts';

const isDesk = (view: View): view is DeskView => view.face === 'desk';

/** The desk: how the services stand, and one section of the day at a time under its tab. */
@customElement('desk-page')
export class DeskPage extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        /* Where letters are so large that head and tabs fill the glass, the page is scrolled. */
        grid-template-rows: auto auto auto auto minmax(min(12rem, 60dvh), 1fr);
        grid-template-columns: minmax(0, 1fr);
        height: 100dvh;
        overflow-y: auto;
        background: var(--ground);
      }
      [role='tablist'] {
        display: flex;
        flex-wrap: wrap;
        padding: 0 calc(var(--edge) - 0.6em);
        /* Under the stroke of the one that is open, not beside it. */
        box-shadow: inset 0 calc(-1 * var(--line)) var(--ink);
      }
      [role='tab'] {
        position: relative;
        flex: none;
        min-width: 44px;
        min-height: 44px;
        padding: calc(2 * var(--heavy)) 0.6em 0;
        font-weight: 600;
        text-align: center;
        border-bottom: calc(2 * var(--heavy)) solid transparent;
      }
      [aria-selected='true'] {
        font-weight: 800;
        border-bottom-color: var(--ink);
      }
      /* So that no name becomes wider, and none beside it moves, when it is chosen. */
      [role='tab']::after {
        content: attr(data-name);
        display: block;
        height: 0;
        overflow: hidden;
        visibility: hidden;
        font-weight: 800;
      }
      /* Before it, where no name is moved by it. */
      .needed::before {
        content: '';
        position: absolute;
        inset: 0 100% 0 calc(-2 * var(--heavy));
        background: var(--brick);
      }
      @media (width < 75rem) {
        [role='tablist'] {
          font-size: var(--small);
        }
      }
      @media (width < 600px) {
        [role='tablist'] {
          display: block;
          padding: 0 calc(var(--edge) / 2);
          text-align: justify;
          text-align-last: justify;
          text-wrap: balance;
          word-spacing: -0.15em;
        }
        [role='tab'] {
          padding-inline: 1px;
          text-align-last: center;
          word-spacing: normal;
        }
      }
      main {
        /* Whether anybody was called or not. */
        grid-row: 5;
        overflow: auto;
        min-height: 0;
      }
      .quiet {
        padding: var(--edge);
        font-weight: 700;
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) alerts: AlertWatch | null = null;
  @property() language: Language = 'en';
  @state() private section: Section | undefined = sectionOf(location.hash);
  @state() private of: string | null = ofIn(location.hash);

  #day: DayController<DeskView> | null = null;
  readonly #tabsSize = new ResizeObserver(onceAFrame(() => this.#showTab()));
  readonly #onHash = () => {
    this.section = sectionOf(location.hash);
    this.of = ofIn(location.hash);
  };

  override connectedCallback(): void {
    super.connectedCallback();
    const { sync, language } = this;
    this.#day ??= new DayController(this, { sync, language, isOurs: isDesk });
    addEventListener('hashchange', this.#onHash);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.#onHash);
    this.#tabsSize.disconnect();
  }

  protected override willUpdate(): void {
    if (this.#day) this.say = this.#day.say;
  }

  protected override firstUpdated(): void {
    const tabs = this.renderRoot.querySelector('[role="tablist"]');
    if (tabs) this.#tabsSize.observe(tabs);
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('section')) this.#showTab();
  }

  protected override draw() {
    const drawn = this.#day?.drawn ?? null;
    const view = drawn?.view ?? null;
    const { say, sync } = this;
    return html`<desk-head
        .say=${say}
        .view=${view}
        .now=${sync.hubNow()}
        ?mending=${this.section?.name === 'mend'}
      ></desk-head>
      ${this.#tabs(view)}
      <alert-line .say=${say} .shown=${this.alerts?.shown ?? null} rates></alert-line>
      ${notice({ now: [] }, this)}
      <main role="tabpanel" tabindex="0" aria-label=${this.#name(this.section)}>
        ${drawn ? this.section?.draw({ sync, say, of: this.of, ...drawn }) : this.#bare()}
      </main>`;
  }

  #tabs(view: DeskView | null) {
    const isNeeded = view !== null && wantsMending(view);
    return html`<div role="tablist" @keydown=${this.#step}>
      ${sections.map((section) => {
        const isOpen = section === this.section;
        return html`<button
          class=${isNeeded && section.name === 'mend' ? 'needed' : ''}
          data-name=${this.#name(section)}
          role="tab"
          aria-selected=${isOpen}
          tabindex=${isOpen ? 0 : -1}
          @click=${() => open(section)}
        >
          ${this.#name(section)}
        </button> `;
      })}
    </div>`;
  }

  /** As tabs do: arrows go from one to the next, and the next is open at once. */
  #step({ key, currentTarget }: KeyboardEvent): void {
    const by = { ArrowRight: 1, ArrowLeft: -1 }[key];
    if (by === undefined || !this.section) return;
    const place = (sections.indexOf(this.section) + by + sections.length) % sections.length;
    const next = sections[place];
    if (!next) return;
    open(next);
    (currentTarget as HTMLElement).querySelectorAll('button')[place]?.focus();
  }

  /** In very large letters the tabs are more than the glass: the open one is among those seen. */
  #showTab(): void {
    const tab = this.renderRoot.querySelector('[aria-selected="true"]');
    tab?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  #name(section: Section | undefined): string {
    return section ? deskWords[this.say.language].sections[section.name] : '';
  }

  #bare() {
    return this.section?.bare?.(this.say) ?? this.#nothing();
  }

  #nothing() {
    const { blank } = this.sync.state;
    return html`<p class="quiet">${blank ? sayRefusal(blank, this.say) : this.words.looking}</p>`;
  }
}

/** A section has an address of its own, so that it can be linked to and stays when loaded anew. */
function sectionOf(hash: string): Section | undefined {
  const [asked] = hash.slice(1).split('/');
  return sections.find(({ name }) => name === asked) ?? sections[0];
}

/** What of a section is meant, behind the stroke. */
const ofIn = (hash: string): string | null =>
  decodeURIComponent(hash.split('/').slice(1).join('/')) || null;

const open = ({ name }: Section): void => {
  location.hash = name;
};
