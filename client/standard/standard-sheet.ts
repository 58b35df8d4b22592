import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { CutId } from '../../shared/kernel/index.ts';
import type { CutStandard } from '../../shared/view/index.ts';
import { standardWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './cut-standard.ts';
import { readStandards } from './standards.ts';

/** A sheet that nobody touches goes by itself: the work lies under it. */
const LEFT_MS = 180_000;

/** The standard of one cut over a whole screen, till it is closed or left alone. */
@customElement('standard-sheet')
export class StandardSheet extends Part {
  static override styles = [
    base,
    css`
      :host {
        position: fixed;
        inset: 0;
        z-index: 2;
        display: grid;
        grid-template-rows: minmax(0, 1fr) auto;
        background: var(--ground);
      }
      .page {
        overflow-y: auto;
        overscroll-behavior: contain;
        /* Whoever learns stands at the glass, half as far away as the hands at the table. */
        --small: calc(var(--body) * 0.72);
        --strong: var(--body);
      }
      button {
        width: 100%;
        min-height: max(var(--touch), 2em);
        border-top: var(--line) solid var(--ink);
        font-weight: 800;
        text-align: center;
      }
      .away {
        padding: var(--edge);
      }
    `,
  ];

  @property({ attribute: false }) cut: CutId | null = null;
  @state() private standard: CutStandard | 'looking' | null = 'looking';

  #left: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.setAttribute('role', 'dialog');
    this.setAttribute('aria-modal', 'true');
    this.addEventListener('pointerdown', this.#touched);
    addEventListener('keydown', this.#key);
    this.#touched();
    void this.#load();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('keydown', this.#key);
    clearTimeout(this.#left);
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('button')?.focus();
  }

  protected override draw() {
    const said = standardWords[this.say.language];
    return html`<div class="page" tabindex="0">${this.#page()}</div>
      <button @click=${this.#close}>${said.close}</button>`;
  }

  #page() {
    const { standard, say } = this;
    if (standard === 'looking') return nothing;
    if (!standard) return html`<p class="away">${standardWords[say.language].away}</p>`;
    return html`<cut-standard
      .say=${say}
      .standard=${standard}
    ></cut-standard>`;
  }

  async #load(): Promise<void> {
    const shown = await readStandards();
    this.standard = shown?.cuts.find(({ cut }) => cut === this.cut) ?? null;
    const name = this.standard?.name;
    if (name) this.ariaLabel = standardWords[this.say.language].standard(textIn(name, this.say));
  }

  #touched = () => {
    clearTimeout(this.#left);
    this.#left = setTimeout(this.#close, LEFT_MS);
  };

  #key = ({ key }: KeyboardEvent) => {
    this.#touched();
    if (key === 'Escape') this.#close();
  };

  #close = () => this.remove();
}
