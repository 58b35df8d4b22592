import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanConflict, PlanTried } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import { deskWords, planEditorWords, sayRefusal } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { type Further, NOTHING_YET } from './look-further.ts';
import { planStyle } from './plan-editor.css.ts';

/** How far the hub has come with what is typed. */
export type Phase = 'still' | 'trying' | 'away';

/** So many reasons are read at once; our choice. */
const MOST_LINES = 2;

/**
 * What a plan would do, or what does not fit and what would. The buttons stand first, behind the
 * day that is put in: what is found later makes the words longer, and moves no button away under a
 * finger. Tells `take`, `forget` and `undo`, and `nearest` where what would fit is to be written.
 */
@customElement('plan-verdict')
export class PlanVerdict extends Part {
  static override styles = [base, formStyle, planStyle];

  @property({ attribute: false }) phase: Phase = 'still';
  @property({ attribute: false }) tried: PlanTried | null = null;
  @property({ attribute: false }) further: Further = NOTHING_YET;
  @property({ attribute: false }) refusal: Refusal | null = null;
  @property({ type: Boolean }) changed = false;
  /** What is typed fits. */
  @property({ type: Boolean }) fits = false;
  @property({ type: Boolean }) undoable = false;

  protected override draw() {
    const { tried, phase, refusal, say } = this;
    const { nearest, conflict, isBettering } = this.further;
    const said = planEditorWords[say.language];
    const isAgainst = tried !== null && !tried.fits && !tried.stale;
    return html`<div class="verdict ${isAgainst ? 'against' : ''}">
      <div class="buttons">
        <slot></slot>
        ${this.#buttons()}
      </div>
      <div role="status">
        ${refusal ? this.#refused(refusal) : nothing}
        ${phase === 'away' ? html`<p>${said.away}</p>` : nothing}
        ${phase === 'trying' ? html`<p class="soft">${said.trying}</p>` : nothing}
        ${tried?.taken ? html`<strong>${said.taken}</strong>` : nothing}
        ${this.changed || tried ? nothing : html`<p class="soft">${said.unchanged}</p>`}
        <div class="found">
          <div>
            ${isAgainst ? html`<strong>${said.notFit}</strong>` : nothing}
            ${tried ? this.#lines(tried.lines) : nothing}
            ${tried?.better ? html`<p>${tried.better.line}</p>` : nothing}
            ${isBettering ? html`<p class="soft">${said.bettering}</p>` : nothing}
          </div>
          ${nearest ? html`<p><strong>${said.wouldFit}</strong> ${nearest.line}</p>` : nothing}
          ${conflict ? html`<div>${this.#conflict(conflict)}</div>` : nothing}
        </div>
      </div>
    </div>`;
  }

  /** The first say what is wrong; the plan below is not to be pushed out of sight by all. */
  #lines(lines: readonly string[]) {
    const listed = (some: readonly string[]) =>
      html`<ul>${some.map((line) => html`<li>${line}</li>`)}</ul>`;
    const more = lines.length - MOST_LINES;
    if (more <= 0) return listed(lines);
    return html`${listed(lines.slice(0, MOST_LINES))}
      <details>
        <summary>${planEditorWords[this.say.language].moreLines(more)}</summary>
        ${listed(lines.slice(MOST_LINES))}
      </details>`;
  }

  #buttons() {
    const { phase, say, fits, changed, undoable } = this;
    const said = planEditorWords[say.language];
    const box = (words: string, tells: string, kind = '') =>
      html`<button class=${kind} @click=${() => this.tell(tells, null)}>${words}</button>`;
    return html`<button
        class="takes"
        ?disabled=${!fits || phase !== 'still'}
        @click=${() => this.tell('take', null)}
      >
        ${said.take}
      </button>
      ${changed ? box(said.forget, 'forget', 'leaves') : nothing}
      ${undoable ? box(said.undo, 'undo') : nothing}
      ${this.further.nearest ? box(said.useNearest, 'nearest') : nothing}`;
  }

  #conflict({ cannot, demands, advice }: NonNullable<PlanConflict['conflict']>) {
    return html`<p>${cannot}</p>
      <ul>
        ${demands.map((demand) => html`<li>${demand}</li>`)}
      </ul>
      <p>${advice}</p>`;
  }

  /** Where a PIN is asked for, with the way to where it is typed. */
  #refused(refusal: Refusal) {
    const { say } = this;
    const { who } = deskWords[say.language].sections;
    return html`<p>
      ${sayRefusal(refusal, say)}
      ${refusal.rule === 'needs-pin' ? html`<a href="#who">${who}</a>` : nothing}
    </p>`;
  }
}
