import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanTried } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import { planEditorWords, sayRefusal } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { planStyle } from './plan-editor.css.ts';

/** How far the hub has come with what is typed. */
export type Phase = 'still' | 'trying' | 'away';

/** What a plan would do, or what does not fit and what would; the buttons are put in. */
@customElement('plan-verdict')
export class PlanVerdict extends Part {
  static override styles = [base, formStyle, planStyle];

  @property({ attribute: false }) phase: Phase = 'still';
  @property({ attribute: false }) tried: PlanTried | null = null;
  @property({ attribute: false }) refusal: Refusal | null = null;
  @property({ type: Boolean }) changed = false;

  protected override draw() {
    const { tried, phase, refusal, say } = this;
    const said = planEditorWords[say.language];
    const isAgainst = tried !== null && !tried.fits && !tried.stale;
    return html`<div class="verdict ${isAgainst ? 'against' : ''}">
      <div role="status">
        ${refusal ? html`<p>${sayRefusal(refusal, say)}</p>` : nothing}
        ${phase === 'away' ? html`<p>${said.away}</p>` : nothing}
        ${phase === 'trying' ? html`<p class="soft">${said.trying}</p>` : nothing}
        ${tried?.taken ? html`<strong>${said.taken}</strong>` : nothing}
        ${this.changed || tried ? nothing : html`<p class="soft">${said.unchanged}</p>`}
        ${isAgainst ? html`<strong>${said.notFit}</strong>` : nothing}
        <ul>
          ${tried?.lines.map((line) => html`<li>${line}</li>`)}
        </ul>
      </div>
      <div class="buttons"><slot></slot></div>
    </div>`;
  }
}
