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

/**
 * What a plan would do, or what does not fit and what would; the buttons are put in. They stand
 * first: what is found later makes the words longer, and moves no button away under a finger. Tells
 * `nearest` where what would fit is to be written instead.
 */
@customElement('plan-verdict')
export class PlanVerdict extends Part {
  static override styles = [base, formStyle, planStyle];

  @property({ attribute: false }) phase: Phase = 'still';
  @property({ attribute: false }) tried: PlanTried | null = null;
  @property({ attribute: false }) further: Further = NOTHING_YET;
  @property({ attribute: false }) refusal: Refusal | null = null;
  @property({ type: Boolean }) changed = false;

  protected override draw() {
    const { tried, phase, refusal, say } = this;
    const { nearest, conflict, isBettering } = this.further;
    const said = planEditorWords[say.language];
    const isAgainst = tried !== null && !tried.fits && !tried.stale;
    return html`<div class="verdict ${isAgainst ? 'against' : ''}">
      <div class="buttons">
        <slot></slot>
        ${
          nearest
            ? html`<button @click=${() => this.tell('nearest', null)}>${said.useNearest}</button>`
            : nothing
        }
      </div>
      <div role="status">
        ${refusal ? this.#refused(refusal) : nothing}
        ${phase === 'away' ? html`<p>${said.away}</p>` : nothing}
        ${phase === 'trying' ? html`<p class="soft">${said.trying}</p>` : nothing}
        ${tried?.taken ? html`<strong>${said.taken}</strong>` : nothing}
        ${this.changed || tried ? nothing : html`<p class="soft">${said.unchanged}</p>`}
        ${isAgainst ? html`<strong>${said.notFit}</strong>` : nothing}
        <ul>
          ${tried?.lines.map((line) => html`<li>${line}</li>`)}
        </ul>
        ${tried?.better ? html`<p>${tried.better.line}</p>` : nothing}
        ${isBettering ? html`<p class="soft">${said.bettering}</p>` : nothing}
        ${nearest ? html`<p>${nearest.line}</p>` : nothing}
        ${conflict ? this.#conflict(conflict) : nothing}
      </div>
    </div>`;
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
