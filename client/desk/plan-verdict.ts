import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanNearest, PlanTried } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import { deskWords, planEditorWords, sayRefusal } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { planStyle } from './plan-editor.css.ts';

/** How far the hub has come with what is typed. */
export type Phase = 'still' | 'trying' | 'away';

/**
 * What a plan would do, or what does not fit and what would; the buttons are put in. Tells
 * `nearest` where what would fit is to be written instead.
 */
@customElement('plan-verdict')
export class PlanVerdict extends Part {
  static override styles = [base, formStyle, planStyle];

  @property({ attribute: false }) phase: Phase = 'still';
  @property({ attribute: false }) tried: PlanTried | null = null;
  @property({ attribute: false }) nearest: PlanNearest['nearest'] = null;
  @property({ attribute: false }) refusal: Refusal | null = null;
  @property({ type: Boolean }) changed = false;

  protected override draw() {
    const { tried, phase, refusal, nearest, say } = this;
    const said = planEditorWords[say.language];
    const isAgainst = tried !== null && !tried.fits && !tried.stale;
    return html`<div class="verdict ${isAgainst ? 'against' : ''}">
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
        ${nearest ? html`<p>${nearest.line}</p>` : nothing}
      </div>
      <div class="buttons">
        ${
          nearest
            ? html`<button @click=${() => this.tell('nearest', null)}>${said.useNearest}</button>`
            : nothing
        }
        <slot></slot>
      </div>
    </div>`;
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
